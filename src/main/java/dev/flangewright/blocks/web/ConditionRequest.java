package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockAction;
import dev.flangewright.receipts.Ask;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What happened to a block. */
record ConditionRequest(
    @Schema(description = "In capitals or small letters.")
        @NotNull(
            message =
                "is missing; it is MAKE_READY, TAKE, PUT_BACK, REPORT_DAMAGE, REPAIR or SCRAP")
        BlockAction action,
    @Schema(description = "Needed for REPORT_DAMAGE, REPAIR and SCRAP; at most 2000 characters.")
        @Nullable String why,
    @Schema(description = "The version of the block that you saw; a later one is refused (409).")
        @Nullable Long blockVersion) {

  Ask ask(@Nullable UUID key) {
    return new Ask(key, null, action + ": " + whyOrNone());
  }

  String whyOrNone() {
    return why == null ? "" : why;
  }
}
