package dev.flangewright.bench.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** When a piece was quenched. */
record QuenchRequest(
    @NotNull(message = "is missing: say when it was quenched")
        @Schema(description = "At most 24 hours back.")
        Instant quenchedAt,
    @Schema(description = "At most 2000 characters.") @Nullable String note,
    @Schema(description = "When it was done, if it is sent later; not in the future.")
        @Nullable Instant doneAt) {

  String noteOrNone() {
    return note == null ? "" : note;
  }
}
