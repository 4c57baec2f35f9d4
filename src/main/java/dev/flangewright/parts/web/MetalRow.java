package dev.flangewright.parts.web;

import dev.flangewright.materials.Metal;
import dev.flangewright.materials.Sourced;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value of the metal with where it comes from.
 *
 * @param without what cannot be told where the value is missing; empty where it is known
 */
record MetalRow(String label, Figure figure, String source, String knownBy, String without) {

  static List<MetalRow> of(Metal metal) {
    return List.of(
        of("Elongation", metal.elongationPct(), 1, "%", "the split limit"),
        of("Uniform strain to go by", metal.uniformStrain(), 2, "", "when to soften"),
        of("Proof stress", metal.proofMpa(), 0, "MPa", "springback and the block"),
        of("Young's modulus", metal.youngMpa(), 0, "MPa", "springback and the block"),
        of("Tensile strength", metal.utsMpa(), 0, "MPa", "nothing on this page"),
        of("Density", metal.densityKgM3(), 0, "kg/m³", "the mass of the blank"),
        of("R, normal anisotropy", metal.anisotropy(), 2, "", "R, the shop value serves instead"),
        of("Smallest bend radius", metal.minBendRadiusMm(), 2, "mm", "the bend radius check"));
  }

  private static MetalRow of(
      String label, @Nullable Sourced value, int decimals, String unit, String without) {
    return value == null
        ? new MetalRow(
            label, Figure.words("not known"), "no certificate and no table gives it", "", without)
        : new MetalRow(
            label,
            Figure.of(value.value(), decimals, unit),
            value.source(),
            value.knownInWords(),
            "");
  }
}
