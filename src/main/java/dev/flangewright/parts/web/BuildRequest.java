package dev.flangewright.parts.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** A build to be made. */
record BuildRequest(
    @Schema(description = "1 to 120 characters, not yet taken.", example = "Tidewing hull")
        @NotNull(message = "is missing")
        String name,
    @Schema(description = "At most 2000 characters; may be left out.") @Nullable String note) {}
