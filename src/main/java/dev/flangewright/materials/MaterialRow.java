package dev.flangewright.materials;

import org.jspecify.annotations.Nullable;

/**
 * A row of the shipped table of alloys and tempers; stresses in MPa, thickness in mm.
 *
 * @param nValue strain-hardening exponent, which is the natural uniform strain of a metal that
 *     hardens by a power law; see {@link #uniformStrain}
 */
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
    @Nullable Double nValue,
    String source,
    String knownBy,
    @Nullable String note) {

  private static final String SET_ASIDE = "do not use";

  /** The exponent as a strain to go by; null where the row's note sets it aside. */
  @Nullable Double uniformStrain() {
    return note != null && note.contains(SET_ASIDE) ? null : nValue;
  }

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
