package dev.flangewright.bench;

import dev.flangewright.parts.Written;
import org.jspecify.annotations.Nullable;

/**
 * A part as the ranking reads it: one row of one query.
 *
 * @param riskLevel the stored level's name; null while the part has no figures
 * @param problem why it has none, or what is wrong with its blank
 */
record PartLine(
    long id,
    String partNumber,
    String frame,
    Written frameAtMm,
    String blockSet,
    @Nullable String riskLevel,
    @Nullable String riskMode,
    @Nullable String problem) {

  boolean hasFigures() {
    return riskLevel != null;
  }
}
