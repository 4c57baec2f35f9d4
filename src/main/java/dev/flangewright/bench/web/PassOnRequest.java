package dev.flangewright.bench.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;

/** Why a job is left to others today. */
record PassOnRequest(
    @NotBlank(message = "is missing: say why you pass on it")
        @Schema(description = "At most 200 characters.")
        String reason) {}
