package dev.flangewright.bench;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.LongFunction;

/** Orders the parts of a build that are not done by what should be done to them next. */
final class Ranking {

  private final Map<Long, Attempts> attempts;
  private final Map<String, FrameShare> frames;
  private final Set<String> provenBlockSets = new HashSet<>();
  private final List<PartLine> parts;
  private final LongFunction<String> firstStage;

  /**
   * @param firstStage by part, the name of the stage that a new piece of it begins with
   */
  Ranking(List<PartLine> parts, List<PieceLine> pieces, LongFunction<String> firstStage) {
    this.parts = parts;
    this.attempts = Attempts.byPart(pieces);
    this.frames = FrameShare.ofBuild(parts, attempts);
    this.firstStage = firstStage;
    parts.stream()
        .filter(part -> of(part).passed().isPresent())
        .forEach(part -> provenBlockSets.add(part.blockSet()));
  }

  /** All jobs, the first to be done first; equal ones by part number. */
  List<NextJob> jobs(Hands may) {
    return parts.stream()
        .filter(part -> of(part).passed().isEmpty() || of(part).inWork().isPresent())
        .map(this::candidate)
        .map(candidate -> RankedJob.of(candidate, may))
        .sorted(
            Comparator.comparingDouble(RankedJob::score)
                .reversed()
                .thenComparing(ranked -> ranked.job().partNumber()))
        .map(RankedJob::job)
        .toList();
  }

  private Candidate candidate(PartLine part) {
    boolean proven = !part.blockSet().isBlank() && provenBlockSets.contains(part.blockSet());
    FrameShare frame = Objects.requireNonNull(frames.get(part.frame()));
    return new Candidate(part, of(part), frame, !proven, firstStage.apply(part.id()));
  }

  private Attempts of(PartLine part) {
    return attempts.getOrDefault(part.id(), Attempts.NONE);
  }
}
