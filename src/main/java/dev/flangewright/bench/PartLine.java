package dev.flangewright.bench;

import dev.flangewright.parts.Hand;
import dev.flangewright.parts.Written;
import org.jspecify.annotations.Nullable;

/**
 * A part as the ranking reads it: one row of one query.
 *
 * @param jigOrder which frame the jig needs first, from 1; null if nobody has said
 * @param thickness as drawn: in mm, as a gauge or in inches
 * @param riskLevel the stored level's name; null while the part has no figures
 * @param problem why it has none, or what is wrong with its blank
 */
record PartLine(
    long id,
    String partNumber,
    String frame,
    Written frameAtMm,
    @Nullable Integer jigOrder,
    String segment,
    Hand hand,
    String blockSet,
    String alloy,
    String temper,
    String thickness,
    @Nullable String riskLevel,
    @Nullable String riskMode,
    @Nullable String problem) {

  boolean hasFigures() {
    return riskLevel != null;
  }
}
