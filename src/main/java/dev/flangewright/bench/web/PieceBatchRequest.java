package dev.flangewright.bench.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Which batch a piece was cut from. */
record PieceBatchRequest(
    @NotBlank(message = "is missing: say which one it was cut from")
        @Schema(description = "Its mark.", example = "B-12")
        String batch,
    @NotBlank(message = "is missing: say how it is known")
        @Schema(description = "At most 2000 characters.")
        String reason,
    @Schema(description = "The version of the piece that you saw; a later one is refused (409).")
        @Nullable Long pieceVersion,
    @Schema(description = "When it was done, if it is sent later; not in the future.")
        @Nullable Instant doneAt) {}
