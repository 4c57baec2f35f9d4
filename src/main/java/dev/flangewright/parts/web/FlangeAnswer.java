package dev.flangewright.parts.web;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.FlangeSection;
import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The figures of one section of a flange. */
record FlangeAnswer(
    FlangeKind kind,
    @Schema(description = "Mould line to tangent line, mm.") double setbackMm,
    @Schema(description = "Length of the neutral surface in the bend, mm.") double bendAllowanceMm,
    @Schema(description = "What a straight flange would need beyond the tangent line, mm.")
        double straightBlankMm,
    @Schema(description = "Radius of the web's tangent line, mm; null when PLAIN.")
        @Nullable Double tangentRadiusMm,
    @Schema(description = "Blank beyond the web's tangent line, mm.") double blankBeyondTangentMm,
    @Schema(
            description =
                "Hoop strain of the free edge, natural (logarithmic); negative where it shrinks.")
        double edgeStrain,
    @Schema(description = "Thickness of the free edge after forming, mm.") double edgeThicknessMm,
    @Schema(
            description =
                "Edge to gather (positive) or to gain (negative), mm per metre of the web's tangent"
                    + " line.")
        double gatherMmPerMetre,
    String caution) {

  static FlangeAnswer of(FlangeSection section) {
    return new FlangeAnswer(
        section.kind(),
        section.setbackMm(),
        section.bendAllowanceMm(),
        section.straightBlankMm(),
        InJson.finite(section.tangentRadiusMm()),
        section.blankBeyondTangentMm(),
        section.edgeStrain(),
        section.edgeThicknessMm(),
        section.gatherMmPerMetre(),
        InJson.CAUTION);
  }
}
