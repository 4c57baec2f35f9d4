package dev.flangewright.bench.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** That a piece was taken out of the freezer. */
record ThawRequest(
    @Schema(description = "At most 2000 characters.") @Nullable String note,
    @Schema(description = "When it was done, if it is sent later; not in the future.")
        @Nullable Instant doneAt) {

  static final ThawRequest NOTHING_SAID = new ThawRequest(null, null);

  String noteOrNone() {
    return note == null ? "" : note;
  }
}
