package dev.flangewright.bench;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongFunction;

/**
 * Orders the parts of a build that are not done by what should be done to them next. Pure: the same
 * lines in whatever order give the same list.
 */
final class Ranking {

  private final Map<Long, Attempts> attempts;
  private final Map<String, FrameShare> frames;
  private final TwinTable twins;
  private final Set<String> provenBlockSets = new HashSet<>();
  private final List<PartLine> parts;
  private final LongFunction<Optional<StageCard>> firstStage;

  /**
   * @param pieces of these parts, in the order of their numbers
   * @param firstStage by part, the stage that a new piece of it begins with
   */
  Ranking(
      List<PartLine> parts, List<PieceLine> pieces, LongFunction<Optional<StageCard>> firstStage) {
    this.parts = parts;
    this.attempts = Attempts.byPart(pieces);
    this.frames = FrameShare.ofBuild(parts, attempts);
    this.twins = new TwinTable(parts);
    this.firstStage = firstStage;
    parts.stream()
        .filter(part -> of(part).passed().isPresent())
        .forEach(part -> provenBlockSets.add(part.blockSet()));
  }

  /** All jobs, the first to be done first. */
  List<NextJob> jobs(Asking asked) {
    return parts.stream()
        .filter(part -> of(part).passed().isEmpty() || of(part).inWork().isPresent())
        .map(this::candidate)
        .map(candidate -> RankedJob.of(candidate, asked))
        .sorted(RankedJob.ORDER)
        .map(RankedJob::job)
        .toList();
  }

  private Candidate candidate(PartLine part) {
    boolean proven = !part.blockSet().isBlank() && provenBlockSets.contains(part.blockSet());
    Optional<PartLine> twin = twins.of(part);
    return new Candidate(
        part,
        of(part),
        Objects.requireNonNull(frames.get(part.frame())),
        !proven,
        firstStage.apply(part.id()),
        twin,
        twin.filter(this::isToBegin).isPresent());
  }

  private boolean isToBegin(PartLine part) {
    return part.hasFigures() && of(part).passed().isEmpty() && of(part).inWork().isEmpty();
  }

  private Attempts of(PartLine part) {
    return attempts.getOrDefault(part.id(), Attempts.NONE);
  }
}
