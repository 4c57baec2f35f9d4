package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import dev.flangewright.stock.Batch;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was logged on one piece, oldest first. */
record PieceLog(List<StageEntry> entries) {

  /** The entry that would be taken back; empty if there is none. */
  Optional<StageEntry> undoable() {
    return lastStanding().filter(StageEntry::canBeUndone);
  }

  /**
   * The entry that is taken back.
   *
   * @param by its note is the reason
   * @throws Refused if nothing can be taken back, or the reason is missing
   */
  StageEntry toUndo(Signature by) {
    StageEntry last = lastStanding().orElseThrow(() -> StageRefusal.nothingToUndo(null));
    if (!last.canBeUndone()) {
      throw StageRefusal.nothingToUndo(last);
    }
    if (by.note().isEmpty()) {
      throw Refused.unacceptable("reason is missing: say why the entry is taken back.");
    }
    return last;
  }

  private Optional<StageEntry> lastStanding() {
    return entries.stream().filter(StageEntry::stands).reduce((first, second) -> second);
  }

  /** Whether nothing was logged after it. */
  boolean isLast(StageEntry entry) {
    return entry.ordinal() == entries.size();
  }

  /** The batch that the last line that stands says it was cut from; null if none does. */
  @Nullable Batch batch() {
    return entries.stream()
        .filter(StageEntry::stands)
        .map(StageEntry::batch)
        .filter(Objects::nonNull)
        .reduce((first, second) -> second)
        .orElse(null);
  }

  /** The last line about a stage. */
  Optional<StageEntry> lastOn(String code) {
    return entries.stream()
        .filter(entry -> entry.stageCode().equals(code))
        .reduce((first, second) -> second);
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
