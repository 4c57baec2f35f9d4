package dev.flangewright.quality.web;

import dev.flangewright.quality.Finding;
import dev.flangewright.quality.Outcome;
import dev.flangewright.receipts.Ask;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What an inspection found. */
record InspectionRequest(
    @Schema(description = "In capitals or small letters.")
        @NotNull(message = "is missing; it is ACCEPT, REWORK, CONCESSION or SCRAP")
        Outcome outcome,
    @Schema(
            description = "Code of the scrap cause; needed for SCRAP.",
            example = "edge-not-deburred")
        @Nullable String cause,
    @Schema(
            description =
                "Code of the stage at which the piece was lost (SCRAP) or to which it goes back"
                    + " (REWORK); needed for these two.",
            example = "first-flange")
        @Nullable String stage,
    @Schema(description = "Needed for all but ACCEPT; at most 2000 characters.")
        @Nullable String note,
    @Schema(description = "The version of the piece that you saw; a later one is refused (409).")
        @Nullable Long pieceVersion) {

  Ask ask(@Nullable UUID key) {
    return new Ask(
        key, null, "%s, cause %s, stage %s, note %s".formatted(outcome, cause, stage, note));
  }

  Finding finding() {
    return new Finding(outcome, cause, stage, note == null ? "" : note, pieceVersion);
  }
}
