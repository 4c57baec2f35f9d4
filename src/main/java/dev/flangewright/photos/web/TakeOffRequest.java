package dev.flangewright.photos.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;

/** Why a photo is taken off. */
record TakeOffRequest(
    @NotBlank(message = "is missing: say why the photo is taken off")
        @Schema(description = "At most 500 characters.")
        String reason) {}
