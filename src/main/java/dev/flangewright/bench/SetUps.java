package dev.flangewright.bench;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What one person need not set up anew. */
final class SetUps {

  private final Optional<SetUp> mine;
  private final Set<Done> done;

  private record Done(long partId, SetUp setUp) {}

  /**
   * @param today work over blocks that lies begun or was finished today, by anybody
   */
  SetUps(List<SetUpLine> today, String who) {
    this.mine =
        today.stream()
            .filter(line -> line.startedBy().equals(who))
            .max(
                Comparator.comparing(SetUpLine::startedAt)
                    .thenComparingLong(SetUpLine::partId)
                    .thenComparing(SetUpLine::needsBlock))
            .flatMap(SetUpLine::setUp);
    this.done =
        today.stream()
            .filter(SetUpLine::isFinished)
            .flatMap(line -> line.setUp().map(setUp -> new Done(line.partId(), setUp)).stream())
            .collect(Collectors.toCollection(HashSet::new));
  }

  /** The person last started a stage over it, which is still begun or was finished today. */
  boolean isMine(SetUp wanted) {
    return mine.filter(wanted::equals).isPresent();
  }

  /** The part was worked over it today, by whomever. */
  boolean servedToday(long partId, SetUp wanted) {
    return done.contains(new Done(partId, wanted));
  }
}
