package dev.flangewright.parts.web;

import dev.flangewright.forming.BendRadiusCheck;
import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.FlangeToFigure;
import dev.flangewright.parts.PartFigures;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The figures of one flange: its demand and limits at the working width, and by station. */
record FlangeForming(
    long id,
    String name,
    @Schema(description = "Of the contour as a whole.") FlangeKind kind,
    EdgeCondition edgeCondition,
    @Schema(description = "The strain of largest magnitude, natural; negative where it shrinks.")
        double peakEdgeStrain,
    @Schema(description = "The number of the station that has it, as in the file.") int peakStation,
    @Schema(description = "Edge to gather (positive) or to gain over the whole edge, mm.")
        double gatherMm,
    @Schema(description = "Part of it in the runs that shrink, mm, never negative.")
        double takeOutMm,
    @Schema(description = "Part of it in the runs that stretch, mm, never negative.")
        double putInMm,
    @Schema(description = "Along the mould line, mm.") double contourLengthMm,
    @Schema(description = "Part of it along which cutouts leave a flange, mm.")
        double formedLengthMm,
    @Schema(description = "Along the web's tangent line, mm.") double tangentLengthMm,
    double thinnestEdgeMm,
    @Schema(description = "Strain over the strain at which the edge ruffles; above 1 it ruffles.")
        double peakRuffleRatio,
    @Schema(description = "Strain over the strain at which the edge splits; null when unknown.")
        @Nullable Double peakSplitUtilisation,
    int passes,
    @Schema(description = "Null when no table gives the smallest radius.")
        @Nullable Boolean bendRadiusWideEnough,
    @Schema(description = "Radius of the block that allows for springback, mm; null when unknown.")
        @Nullable Double blockRadiusMm,
    Trimmed atFinishedWidth,
    @Schema(description = "How well the contour agrees with its stations.") FitAnswer fit,
    List<StationForming> stations) {

  /** The demand if the flange is trimmed to its finished width before it is formed. */
  record Trimmed(
      double peakEdgeStrain,
      int peakStation,
      double gatherMm,
      double peakRuffleRatio,
      @Nullable Double peakSplitUtilisation,
      int passes) {

    static Trimmed of(FlangeFigures figures) {
      return new Trimmed(
          figures.peakEdgeStrain(),
          figures.peakStation(),
          figures.gatherMm(),
          figures.peakRuffleRatio(),
          figures.peakSplitUtilisation(),
          figures.passes());
    }
  }

  static FlangeForming of(PartFigures part, PartFigures.OfFlange figured) {
    FlangeToFigure flange = figured.flange();
    FlangeFigures working = figured.working();
    BendRadiusCheck bend = working.bendRadius();
    return new FlangeForming(
        flange.id(),
        flange.name(),
        working.kind(),
        flange.edgeCondition(),
        working.peakEdgeStrain(),
        working.peakStation(),
        working.gatherMm(),
        working.takeOutMm(),
        working.putInMm(),
        working.contourLengthMm(),
        working.formedLengthMm(),
        working.tangentLengthMm(),
        working.thinnestEdgeMm(),
        working.peakRuffleRatio(),
        working.peakSplitUtilisation(),
        working.passes(),
        bend == null ? null : bend.isWideEnough(),
        working.blockRadiusMm(),
        Trimmed.of(figured.finished()),
        FitAnswer.of(part, figured),
        StationForming.of(working));
  }
}
