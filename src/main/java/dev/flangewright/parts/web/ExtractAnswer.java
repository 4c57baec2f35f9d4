package dev.flangewright.parts.web;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.FlangeSummary;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartSummary;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The stored extract of a part's forming figures; absent figures are null. */
record ExtractAnswer(
    @Schema(description = "Why figures are missing or doubtful; null when nothing is wrong.")
        @Nullable String problem,
    @Nullable Double blankAreaMm2,
    @Nullable Double blankLengthMm,
    @Nullable Double blankBreadthMm,
    @Nullable Double blankMassKg,
    @Schema(description = "The failure mode that governs: SPLIT, BEND_RADIUS or RUFFLE.")
        @Nullable String riskMode,
    @Schema(description = "LOW, MODERATE, HIGH or BEYOND.") @Nullable String riskLevel,
    @Schema(description = "Share of the limit that is used up; null when beyond any measure.")
        @Nullable Double riskUtilisation,
    List<OfFlange> flanges) {

  /** One flange's part of the extract. */
  @Schema(name = "FlangeExtract")
  record OfFlange(
      String name,
      FlangeKind kind,
      @Schema(description = "0 where the stations are exact.") double fitToleranceMm,
      @Nullable Double peakEdgeStrain,
      @Schema(description = "The station's number as in the file.") @Nullable Integer peakStation,
      @Schema(description = "Edge to gather (positive) or to gain over the whole edge, mm.")
          @Nullable Double gatherMm,
      @Schema(description = "Along the mould line, mm.") @Nullable Double contourLengthMm,
      @Nullable Double ruffleRatio,
      @Nullable Double splitUtilisation,
      @Nullable Integer passes) {

    static OfFlange of(Flange flange) {
      FlangeSummary figures = flange.summary();
      return new OfFlange(
          flange.name(),
          flange.drawn().kind(),
          flange.drawn().toleranceMm(),
          figures.peakEdgeStrain(),
          figures.peakStation(),
          figures.gatherMm(),
          figures.contourLengthMm(),
          figures.ruffleRatio(),
          figures.splitUtilisation(),
          figures.passes());
    }
  }

  static ExtractAnswer of(Part part) {
    PartSummary summary = part.summary();
    return new ExtractAnswer(
        summary.figuresProblem(),
        summary.blankAreaMm2(),
        summary.blankLengthMm(),
        summary.blankBreadthMm(),
        summary.blankMassKg(),
        summary.riskMode(),
        summary.riskLevel(),
        InJson.finite(summary.riskUtilisation()),
        part.flanges().stream().map(OfFlange::of).toList());
  }
}
