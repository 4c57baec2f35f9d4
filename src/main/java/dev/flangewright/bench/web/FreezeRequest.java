package dev.flangewright.bench.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** That a piece was put into the freezer. */
record FreezeRequest(
    @NotNull(message = "is missing: say how cold the freezer is")
        @Schema(description = "Of the freezer, −100 to 20.", example = "-20")
        Double celsius,
    @Schema(description = "At most 2000 characters.") @Nullable String note,
    @Schema(description = "When it was done, if it is sent later; not in the future.")
        @Nullable Instant doneAt) {

  String noteOrNone() {
    return note == null ? "" : note;
  }
}
