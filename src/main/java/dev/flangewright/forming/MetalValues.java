package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * What is known of the metal; null where unknown. A figure that needs a missing value is absent,
 * never guessed.
 *
 * @param elongationPercent A, elongation at fracture, above 0
 * @param proofMpa Y, 0.2 % proof stress
 * @param utsMpa tensile strength
 * @param youngMpa E
 * @param densityKgM3 density
 * @param minBendRadiusMm smallest inside radius for this alloy, temper and thickness
 */
public record MetalValues(
    @Nullable Double elongationPercent,
    @Nullable Double proofMpa,
    @Nullable Double utsMpa,
    @Nullable Double youngMpa,
    @Nullable Double densityKgM3,
    @Nullable Double minBendRadiusMm) {

  /** A metal of which nothing is known. */
  public static final MetalValues UNKNOWN = new MetalValues(null, null, null, null, null, null);

  public MetalValues {
    FormingInput.ELONGATION.checkIfKnown(elongationPercent);
    FormingInput.PROOF.checkIfKnown(proofMpa);
    FormingInput.UTS.checkIfKnown(utsMpa);
    FormingInput.YOUNG.checkIfKnown(youngMpa);
    FormingInput.DENSITY.checkIfKnown(densityKgM3);
    FormingInput.MIN_BEND_RADIUS.checkIfKnown(minBendRadiusMm);
  }
}
