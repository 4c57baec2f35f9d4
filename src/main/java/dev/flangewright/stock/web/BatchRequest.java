package dev.flangewright.stock.web;

import dev.flangewright.stock.BatchAction;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** What happened to a batch. */
record BatchRequest(
    @Schema(description = "In capitals or small letters.")
        @NotNull(message = "is missing; it is RELEASE, HOLD_BACK, TAKE_BACK or USE_UP")
        BatchAction action,
    @Schema(
            description =
                "Who checked, or why: needed for RELEASE, HOLD_BACK and TAKE_BACK; at most 2000"
                    + " characters.")
        @Nullable String words,
    @Schema(description = "The version of the batch that you saw; a later one is refused (409).")
        @Nullable Long batchVersion) {}
