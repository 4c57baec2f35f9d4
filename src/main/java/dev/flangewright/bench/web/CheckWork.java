package dev.flangewright.bench.web;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The answer to a check. */
record CheckWork(
    @Schema(description = "For a check that asks for yes or no.") @Nullable Boolean yes,
    @Schema(description = "For a check that asks for a number, in its unit.", example = "1.2")
        @Nullable Double number,
    @Schema(description = "At most 2000 characters.") @Nullable String note,
    @Schema(description = "The version of the piece that you saw; a later one is refused (409).")
        @Nullable Long pieceVersion) {

  String noteOrNone() {
    return note == null ? "" : note;
  }
}
