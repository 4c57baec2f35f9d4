package dev.flangewright.bench.web;

import dev.flangewright.bench.EntryAction;
import dev.flangewright.bench.StageEntry;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A line of a piece's log. */
record EntryAnswer(
    int ordinal,
    String stage,
    EntryAction action,
    String who,
    Instant doneAt,
    @Schema(description = "Later than doneAt for an entry that was sent later.") Instant receivedAt,
    @Nullable Double hours,
    String note,
    @Schema(description = "What was answered to a check, or what was damaged; null if nothing.")
        @Nullable String said,
    @Schema(description = "A later line took this one back.") boolean undone) {

  static EntryAnswer of(StageEntry entry) {
    return new EntryAnswer(
        entry.ordinal(),
        entry.stageCode(),
        entry.action(),
        entry.who(),
        entry.doneAt(),
        entry.receivedAt(),
        entry.hours(),
        entry.note(),
        entry.said(),
        entry.undone());
  }
}
