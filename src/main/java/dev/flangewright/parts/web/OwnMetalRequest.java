package dev.flangewright.parts.web;

import dev.flangewright.materials.CertificateValues;
import dev.flangewright.materials.OwnMetalEntry;
import dev.flangewright.parts.Faults;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** A certificate's values to be entered; what it does not state is left out. */
record OwnMetalRequest(
    @Schema(description = "1 to 60 characters.", example = "2024") @NotNull(message = "is missing")
        String alloy,
    @Schema(description = "1 to 30 characters.", example = "O") @NotNull(message = "is missing")
        String temper,
    @Schema(description = "Thinnest sheet it is for, mm; leave out both for any thickness.")
        @Nullable Double fromThicknessMm,
    @Schema(description = "Thickest sheet it is for, mm.") @Nullable Double toThicknessMm,
    @Schema(description = "Number of the certificate and what else tells it apart.")
        @NotNull(message = "is missing")
        String certificate,
    @Nullable Double densityKgM3,
    @Schema(description = "MPa.") @Nullable Double youngMpa,
    @Schema(description = "0.2 % proof stress, MPa.") @Nullable Double proofMpa,
    @Schema(description = "MPa.") @Nullable Double utsMpa,
    @Schema(description = "At fracture, per cent.") @Nullable Double elongationPercent,
    @Schema(description = "Natural, or the hardening exponent n.") @Nullable Double uniformStrain,
    @Schema(description = "R, width strain over thickness strain.") @Nullable Double anisotropy,
    @Schema(description = "Smallest inside bend radius over thickness.")
        @Nullable Double minBendRatio) {

  /**
   * @throws dev.flangewright.forming.FormingException if a value is out of its range
   * @throws dev.flangewright.people.Refused if a text cannot be taken, or no value is stated
   */
  OwnMetalEntry entry() {
    Faults faults = new Faults();
    faults.text("alloy", alloy, 60);
    faults.text("temper", temper, 30);
    faults.text("certificate", certificate, 300);
    faults.refuseIfAny();
    return new OwnMetalEntry(
        alloy,
        temper,
        fromThicknessMm,
        toThicknessMm,
        certificate,
        new CertificateValues(
            densityKgM3,
            youngMpa,
            proofMpa,
            utsMpa,
            elongationPercent,
            uniformStrain,
            anisotropy,
            minBendRatio));
  }
}
