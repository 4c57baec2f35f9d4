package dev.flangewright.parts.web;

import dev.flangewright.forming.Risk;
import dev.flangewright.forming.RiskLevel;
import dev.flangewright.forming.RiskMode;
import dev.flangewright.forming.Sheet;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartFigures;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** All forming figures of a part. */
record PartForming(
    long partId,
    String partNumber,
    @Schema(description = "As written: 1.2, 20 SWG or 0.036 in.") String thickness,
    double thicknessMm,
    double insideBendRadiusMm,
    @Schema(description = "Fraction of the thickness.") double kFactor,
    @Schema(description = "Normal anisotropy; 1 is isotropic.") double anisotropy,
    @Schema(description = "The flanges that have a contour.") List<FlangeForming> flanges,
    @Schema(description = "Null when no flange has a contour.") @Nullable BlankAnswer blank,
    MetalAnswer metal,
    List<ShopValueAnswer> shopValues,
    @Schema(description = "Null when no flange has a contour.") @Nullable RiskAnswer risk,
    String caution) {

  /** How near the part is to its limits. */
  record RiskAnswer(
      RiskMode governing,
      RiskLevel level,
      @Schema(description = "Share of the limit that is used up; null when beyond any measure.")
          @Nullable Double utilisation,
      @Schema(description = "Modes that could not be judged: a value of the metal is missing.")
          List<RiskMode> unknown) {

    static RiskAnswer of(Risk risk) {
      return new RiskAnswer(
          risk.governing(), risk.level(), InJson.finite(risk.utilisation()), risk.unknown());
    }
  }

  static PartForming of(Part part, PartFigures figures) {
    Sheet sheet = figures.sheet();
    return new PartForming(
        part.id(),
        part.partNumber(),
        figures.thickness().written(),
        sheet.thicknessMm(),
        sheet.insideBendRadiusMm(),
        sheet.kFactor(),
        sheet.anisotropy(),
        figures.flanges().stream().map(one -> FlangeForming.of(figures, one)).toList(),
        figures.development() == null ? null : BlankAnswer.of(figures, figures.development()),
        MetalAnswer.of(figures.metal()),
        ShopValueAnswer.of(figures.shopValues()),
        figures.risk() == null ? null : RiskAnswer.of(figures.risk()),
        InJson.CAUTION);
  }
}
