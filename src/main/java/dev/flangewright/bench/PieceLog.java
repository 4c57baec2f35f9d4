package dev.flangewright.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What was logged on one piece, oldest first. */
record PieceLog(List<StageEntry> entries) {

  Optional<StageEntry> lastStanding() {
    return entries.stream().filter(StageEntry::stands).reduce((first, second) -> second);
  }

  /** The last lines, at most so many. */
  List<StageEntry> last(long count) {
    long fresh = Math.min(entries.size(), Math.max(0, count));
    return entries.subList(entries.size() - (int) fresh, entries.size());
  }

  /** Hours, those before a rework included, those taken back left out. */
  double hoursSpent() {
    return entries.stream()
        .filter(StageEntry::stands)
        .map(StageEntry::hours)
        .filter(Objects::nonNull)
        .mapToDouble(Double::doubleValue)
        .sum();
  }
}
