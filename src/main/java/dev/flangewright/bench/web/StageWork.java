package dev.flangewright.bench.web;

import dev.flangewright.receipts.Ask;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What may be said with an entry; everything may be left out. */
record StageWork(
    @Schema(
            description = "Hours spent, 0 to 1000; they are logged when the stage is finished.",
            example = "1.5")
        @Nullable Double hours,
    @Schema(description = "At most 2000 characters.") @Nullable String note,
    @Schema(
            description =
                "What was damaged on the block that the stage was done on, at most 400 characters;"
                    + " read when the stage is finished. The block then waits for repair.",
            example = "corner chipped at station 4")
        @Nullable String blockDamage,
    @Schema(description = "The version of the piece that you saw; a later one is refused (409).")
        @Nullable Long pieceVersion,
    @Schema(description = "When it was done, if it is sent later; not in the future.")
        @Nullable Instant doneAt) {

  static final StageWork NOTHING_SAID = new StageWork(null, null, null, null, null);

  static StageWork of(@Nullable StageWork body) {
    return body == null ? NOTHING_SAID : body;
  }

  Ask ask(@Nullable UUID key, String what) {
    return new Ask(
        key,
        doneAt,
        "%s, hours %s, damaged %s, note %s"
            .formatted(what, hours, blockDamageOrNone(), noteOrNone()));
  }

  String blockDamageOrNone() {
    return blockDamage == null ? "" : blockDamage;
  }

  String noteOrNone() {
    return note == null ? "" : note;
  }
}
