package dev.flangewright.parts.web;

import dev.flangewright.materials.CertificateValues;
import dev.flangewright.materials.OwnMetal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A build's own metal as its page lists it. */
record OwnMetalRow(
    long id,
    long version,
    String name,
    String thickness,
    List<String> values,
    String source,
    String withdrawal) {

  static OwnMetalRow of(OwnMetal metal) {
    return new OwnMetalRow(
        metal.id(),
        metal.version(),
        metal.name(),
        thickness(metal),
        values(metal.stated()),
        metal.source(),
        metal.withdrawal());
  }

  private static String thickness(OwnMetal metal) {
    return metal.fromThicknessMm() == null
        ? "any thickness"
        : Figure.range(List.of(metal.fromThicknessMm(), metal.toThicknessMm()), 3, "mm").toString();
  }

  private static List<String> values(CertificateValues stated) {
    List<String> said = new ArrayList<>();
    add(said, "Proof stress", stated.proofMpa(), 0, "MPa");
    add(said, "Tensile strength", stated.utsMpa(), 0, "MPa");
    add(said, "Elongation", stated.elongationPercent(), 1, "%");
    add(said, "Uniform strain", stated.uniformStrain(), 3, "");
    add(said, "Young's modulus", stated.youngMpa(), 0, "MPa");
    add(said, "R, normal anisotropy", stated.anisotropy(), 2, "");
    add(said, "Smallest bend radius over thickness", stated.minBendRatio(), 2, "");
    add(said, "Density", stated.densityKgM3(), 0, "kg/m³");
    return said;
  }

  private static void add(
      List<String> said, String label, @Nullable Double value, int decimals, String unit) {
    if (value != null) {
      said.add(label + " " + Figure.of(value, decimals, unit));
    }
  }
}
