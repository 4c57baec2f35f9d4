package dev.flangewright.parts.web;

import dev.flangewright.forming.FormingInput;
import dev.flangewright.materials.CertificateValues;
import dev.flangewright.materials.OwnMetal;
import dev.flangewright.materials.OwnMetalEntry;
import dev.flangewright.parts.Faults;
import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A certificate's values as typed. */
record OwnMetalForm(
    String alloy,
    String temper,
    String fromThicknessMm,
    String toThicknessMm,
    String certificate,
    String densityKgM3,
    String youngMpa,
    String proofMpa,
    String utsMpa,
    String elongationPercent,
    String uniformStrain,
    String anisotropy,
    String minBendRatio) {

  static final OwnMetalForm EMPTY =
      new OwnMetalForm("", "", "", "", "", "", "", "", "", "", "", "", "");

  /** A field that was not sent at all counts as empty. */
  OwnMetalForm {
    alloy = Objects.requireNonNullElse(alloy, "");
    temper = Objects.requireNonNullElse(temper, "");
    fromThicknessMm = Objects.requireNonNullElse(fromThicknessMm, "");
    toThicknessMm = Objects.requireNonNullElse(toThicknessMm, "");
    certificate = Objects.requireNonNullElse(certificate, "");
    densityKgM3 = Objects.requireNonNullElse(densityKgM3, "");
    youngMpa = Objects.requireNonNullElse(youngMpa, "");
    proofMpa = Objects.requireNonNullElse(proofMpa, "");
    utsMpa = Objects.requireNonNullElse(utsMpa, "");
    elongationPercent = Objects.requireNonNullElse(elongationPercent, "");
    uniformStrain = Objects.requireNonNullElse(uniformStrain, "");
    anisotropy = Objects.requireNonNullElse(anisotropy, "");
    minBendRatio = Objects.requireNonNullElse(minBendRatio, "");
  }

  static OwnMetalForm of(OwnMetal metal) {
    CertificateValues stated = metal.stated();
    return new OwnMetalForm(
        metal.alloy(),
        metal.temper(),
        text(metal.fromThicknessMm()),
        text(metal.toThicknessMm()),
        metal.certificate(),
        text(stated.densityKgM3()),
        text(stated.youngMpa()),
        text(stated.proofMpa()),
        text(stated.utsMpa()),
        text(stated.elongationPercent()),
        text(stated.uniformStrain()),
        text(stated.anisotropy()),
        text(stated.minBendRatio()));
  }

  /**
   * @throws dev.flangewright.parts.DrawingRefused naming every field that cannot be taken
   */
  OwnMetalEntry entry() {
    Faults faults = new Faults();
    faults.text("alloy", alloy, 60);
    faults.text("temper", temper, 30);
    faults.text("certificate", certificate, 300);
    Double from = number("from_thickness_mm", fromThicknessMm, FormingInput.THICKNESS, faults);
    Double to = number("to_thickness_mm", toThicknessMm, FormingInput.THICKNESS, faults);
    Double density = number("density_kg_m3", densityKgM3, FormingInput.DENSITY, faults);
    Double young = number("young_mpa", youngMpa, FormingInput.YOUNG, faults);
    Double proof = number("proof_mpa", proofMpa, FormingInput.PROOF, faults);
    Double uts = number("uts_mpa", utsMpa, FormingInput.UTS, faults);
    Double elongation =
        number("elongation_percent", elongationPercent, FormingInput.ELONGATION, faults);
    Double uniform = number("uniform_strain", uniformStrain, FormingInput.UNIFORM_STRAIN, faults);
    Double r = number("anisotropy", anisotropy, FormingInput.ANISOTROPY, faults);
    Double ratio = number("min_bend_ratio", minBendRatio, FormingInput.MIN_BEND_RATIO, faults);
    faults.refuseIfAny();
    return new OwnMetalEntry(
        alloy,
        temper,
        from,
        to,
        certificate,
        new CertificateValues(density, young, proof, uts, elongation, uniform, r, ratio));
  }

  private static @Nullable Double number(
      String field, String written, FormingInput range, Faults faults) {
    return written.isEmpty() ? null : (Double) faults.number(field, written, range).value();
  }

  private static String text(@Nullable Double value) {
    return value == null ? "" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
