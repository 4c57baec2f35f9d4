package dev.flangewright.materials;

import org.jspecify.annotations.Nullable;

/** A row of the shipped table of alloys and tempers; stresses in MPa, thickness in mm. */
public record MaterialRow(
    String alloy,
    String temper,
    String form,
    @Nullable Double thkMinMm,
    @Nullable Double thkMaxMm,
    @Nullable Double densityKgM3,
    @Nullable Double youngGpa,
    @Nullable Double proofTypMpa,
    @Nullable Double proofMinMpa,
    @Nullable Double utsTypMpa,
    @Nullable Double utsMinMpa,
    @Nullable Double elongationMinPct,
    @Nullable Double elongationTypPct,
    String source,
    String knownBy) {

  boolean isBandAround(double thicknessMm) {
    return thkMinMm != null
        && thkMaxMm != null
        && thicknessMm >= thkMinMm
        && thicknessMm <= thkMaxMm;
  }

  boolean isForAnyThickness() {
    return thkMinMm == null && thkMaxMm == null;
  }

  boolean covers(double thicknessMm) {
    return isForAnyThickness() || isBandAround(thicknessMm);
  }
}
