package dev.flangewright.overview.web;

import dev.flangewright.forming.RiskLevel;
import dev.flangewright.forming.RiskMode;
import dev.flangewright.overview.HullPart;
import dev.flangewright.parts.PartState;

/**
 * A part and how it is most likely lost.
 *
 * @param used how much of the limit it needs, in per cent; empty without figures
 */
record RiskLine(
    long partId,
    String partNumber,
    String frame,
    String level,
    String mode,
    String used,
    PartState state,
    String words) {

  static RiskLine of(HullPart hull) {
    RiskLevel level = hull.part().riskLevel();
    RiskMode mode = hull.part().riskMode();
    Double used = hull.part().riskUtilisation();
    return new RiskLine(
        hull.part().id(),
        hull.part().partNumber(),
        hull.part().frame(),
        level == null ? "no figures" : level.label(),
        mode == null ? "" : mode.label(),
        used == null ? "" : Long.toString(Math.round(100 * used)),
        hull.progress().state(),
        hull.progress().words());
  }
}
