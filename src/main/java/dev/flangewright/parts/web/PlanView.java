package dev.flangewright.parts.web;

import dev.flangewright.forming.DemandZone;
import dev.flangewright.forming.FormingPlan;
import dev.flangewright.forming.Practice;
import dev.flangewright.materials.Sourced;
import dev.flangewright.parts.PartFigures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a flange is taken down, as the part sheet tells it.
 *
 * @param where the station that the angles are for
 * @param blocks that two sets of blocks are advised; empty where one serves
 * @param softening when to soften, or why that cannot be told
 */
record PlanView(
    String where, List<PassRow> passes, String blocks, String softening, List<ZoneRow> zones) {

  private static final String UNKNOWN =
      "The uniform strain of this temper stands in no certificate and no table, or is not fit to go"
          + " by, so this page gives no advice on softening.";

  static PlanView of(PartFigures part, PartFigures.OfFlange figured) {
    Sourced uniform = part.metal().uniformStrain();
    FormingPlan plan =
        FormingPlan.of(
            figured.working(),
            part.sheet(),
            uniform == null ? null : uniform.value(),
            part.practice());
    return new PlanView(
        "Bend angles from flat and edge strain at station %d, where the edge has most to do."
            .formatted(plan.peakStation()),
        plan.passes().stream().map(PassRow::of).toList(),
        blocks(plan.firstBlockAngleDeg(), part.practice()),
        uniform == null ? UNKNOWN : softening(plan, uniform, part.practice()),
        DemandZone.of(figured.working(), DemandZone.DEFAULT_LENGTH_MM).stream()
            .map(ZoneRow::of)
            .toList());
  }

  private static String blocks(@Nullable Double firstAngleDeg, Practice practice) {
    return firstAngleDeg == null
        ? ""
        : ("More than %d passes: two sets of blocks are advised, the first to bring the flange to"
                + " %s°, the second to the block angle.")
            .formatted(practice.passesOnOneBlock(), Figure.of(firstAngleDeg, 1, "").text());
  }

  private static String softening(FormingPlan plan, Sourced uniform, Practice practice) {
    String share =
        "%s of the uniform strain, %s (%s)"
            .formatted(
                Figure.percent(practice.shareBeforeSoftening(), 0),
                Figure.percent(uniform.value(), 1),
                uniform.said());
    boolean soften = plan.passes().stream().anyMatch(FormingPlan.Pass::softenFirst);
    return soften
        ? ("Soften where the table says so, before the edge passes %s; only where the drawing and"
                + " the process sheet allow it, and as they say.")
            .formatted(share)
        : "No softening needed by these figures: the edge stays within %s.".formatted(share);
  }
}
