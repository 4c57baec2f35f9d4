package dev.flangewright.parts.web;

import dev.flangewright.materials.CertificateValues;
import dev.flangewright.materials.OwnMetal;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A metal that a build has entered from a certificate. */
record OwnMetalAnswer(
    long id,
    String alloy,
    String temper,
    @Schema(description = "Millimetres; null, with the other, for any thickness.")
        @Nullable Double fromThicknessMm,
    @Nullable Double toThicknessMm,
    String certificate,
    CertificateValues values,
    String enteredBy,
    Instant enteredAt,
    @Schema(description = "Withdrawn values stay in the record and answer no more.")
        boolean withdrawn) {

  static OwnMetalAnswer of(OwnMetal metal) {
    return new OwnMetalAnswer(
        metal.id(),
        metal.alloy(),
        metal.temper(),
        metal.fromThicknessMm(),
        metal.toThicknessMm(),
        metal.certificate(),
        metal.stated(),
        metal.enteredBy(),
        metal.enteredAt(),
        metal.isWithdrawn());
  }
}
