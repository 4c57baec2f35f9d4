package dev.flangewright.bench.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Why a piece may be formed past its forming window. */
record LateFormingRequest(
    @NotBlank(message = "is missing: say why it may be formed past its window")
        @Schema(description = "At most 2000 characters.")
        String reason,
    @Schema(description = "When it was done, if it is sent later; not in the future.")
        @Nullable Instant doneAt) {}
