package dev.flangewright.materials;

/**
 * A row of the shipped hardening exponents, computed from typical proof stress and tensile strength
 * (MPa): σ = K·ε^n through both.
 *
 * @param utsCheckMpa the tensile strength that K and n give back: K·n^n·e^−n
 */
public record HardeningRow(
    String alloy,
    String temper,
    double proofTypMpa,
    double utsTypMpa,
    double nValue,
    double kMpa,
    double utsCheckMpa,
    String source,
    String knownBy) {

  boolean isOf(String wantedAlloy, String wantedTemper) {
    return alloy.equalsIgnoreCase(wantedAlloy) && temper.equalsIgnoreCase(wantedTemper);
  }
}
