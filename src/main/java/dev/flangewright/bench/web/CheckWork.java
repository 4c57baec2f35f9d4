package dev.flangewright.bench.web;

import dev.flangewright.receipts.Ask;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The answer to a check. */
record CheckWork(
    @Schema(description = "For a check that asks for yes or no.") @Nullable Boolean yes,
    @Schema(description = "For a check that asks for a number, in its unit.", example = "1.2")
        @Nullable Double number,
    @Schema(description = "For a check that asks for a photo: one of the piece, by its id.")
        @Nullable Long photo,
    @Schema(description = "At most 2000 characters.") @Nullable String note,
    @Schema(description = "The version of the piece that you saw; a later one is refused (409).")
        @Nullable Long pieceVersion,
    @Schema(description = "When it was done, if it is sent later; not in the future.")
        @Nullable Instant doneAt) {

  Ask ask(@Nullable UUID key, String what) {
    return new Ask(
        key, doneAt, "%s: %s %s %s, note %s".formatted(what, yes, number, photo, noteOrNone()));
  }

  String noteOrNone() {
    return note == null ? "" : note;
  }
}
