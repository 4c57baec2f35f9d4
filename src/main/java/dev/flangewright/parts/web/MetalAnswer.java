package dev.flangewright.parts.web;

import dev.flangewright.materials.Metal;
import dev.flangewright.materials.Sourced;
import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** What is known of the metal, each value with its source; unknown is null. */
record MetalAnswer(
    String alloy,
    String temper,
    @Nullable Value densityKgM3,
    @Nullable Value youngMpa,
    @Nullable Value proofMpa,
    @Nullable Value utsMpa,
    @Nullable Value elongationPct,
    @Schema(description = "Natural; the hardening exponent.") @Nullable Value uniformStrain,
    @Schema(description = "R, normal anisotropy; only a certificate gives it.")
        @Nullable Value anisotropy,
    @Nullable Value minBendRadiusMm) {

  /** A value with where it stands. */
  @Schema(name = "SourcedValue")
  record Value(
      double value,
      String source,
      @Schema(
              description =
                  "read, memory, computed, certificate; for shop values own value or default.")
          String knownBy,
      @Schema(description = "True: recalled, not read; check it before relying on it.")
          boolean fromMemory) {

    static @Nullable Value of(@Nullable Sourced known) {
      return known == null
          ? null
          : new Value(known.value(), known.source(), known.knownBy(), known.fromMemory());
    }
  }

  static MetalAnswer of(Metal metal) {
    return new MetalAnswer(
        metal.alloy(),
        metal.temper(),
        Value.of(metal.densityKgM3()),
        Value.of(metal.youngMpa()),
        Value.of(metal.proofMpa()),
        Value.of(metal.utsMpa()),
        Value.of(metal.elongationPct()),
        Value.of(metal.uniformStrain()),
        Value.of(metal.anisotropy()),
        Value.of(metal.minBendRadiusMm()));
  }
}
