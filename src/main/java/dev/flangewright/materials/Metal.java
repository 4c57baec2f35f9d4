package dev.flangewright.materials;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an alloy and temper at one thickness. A value that neither a certificate of the
 * build nor a table gives is null; nothing is guessed.
 *
 * @param elongationPct least elongation for the thickness, else the specified limit, else typical
 * @param proofMpa typical 0.2 % proof stress, else the least (the higher one springs back more)
 * @param uniformStrain natural; the strain-hardening exponent: published, unless its table sets it
 *     aside, else computed from the strengths
 * @param anisotropy R, normal anisotropy; only certificates give it
 * @param minBendRadiusMm the largest of the tables' upper figures, interpolated in thickness
 */
public record Metal(
    String alloy,
    String temper,
    double thicknessMm,
    @Nullable Sourced densityKgM3,
    @Nullable Sourced youngMpa,
    @Nullable Sourced proofMpa,
    @Nullable Sourced utsMpa,
    @Nullable Sourced elongationPct,
    @Nullable Sourced uniformStrain,
    @Nullable Sourced anisotropy,
    @Nullable Sourced minBendRadiusMm) {

  /** True if no certificate and no table has this alloy and temper. */
  public boolean isUnknown() {
    return values().isEmpty();
  }

  /** All values that are known. */
  public List<Sourced> values() {
    return Stream.of(
            densityKgM3,
            youngMpa,
            proofMpa,
            utsMpa,
            elongationPct,
            uniformStrain,
            anisotropy,
            minBendRadiusMm)
        .filter(Objects::nonNull)
        .toList();
  }
}
