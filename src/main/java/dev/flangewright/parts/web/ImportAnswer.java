package dev.flangewright.parts.web;

import dev.flangewright.parts.exchange.Change;
import dev.flangewright.parts.exchange.Counts;
import dev.flangewright.parts.exchange.ImportPlan;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** What an import did, or would do. */
record ImportAnswer(
    @Schema(description = "False for a preview, and when the build holds all of it already.")
        boolean stored,
    @Schema(description = "Rows of register.csv, one a flange.") Counts register,
    @Schema(description = "Flanges of contours.csv.") Counts contours,
    int newPartCount,
    @Schema(description = "Part numbers, the first of them.") List<String> newParts,
    int changeCount,
    @Schema(description = "Values that change, the first of them.") List<Change> changes,
    @Schema(description = "What to know though it keeps nothing from being imported.")
        List<String> notices) {

  static ImportAnswer preview(ImportPlan plan) {
    return of(plan, false);
  }

  static ImportAnswer stored(ImportPlan plan) {
    return of(plan, !plan.changesNothing());
  }

  private static ImportAnswer of(ImportPlan plan, boolean stored) {
    return new ImportAnswer(
        stored,
        plan.register(),
        plan.contours(),
        plan.newPartCount(),
        plan.newParts(),
        plan.changeCount(),
        plan.changes(),
        plan.notices());
  }
}
