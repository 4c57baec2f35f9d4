package dev.flangewright.parts.web;

import dev.flangewright.forming.BevelTable;
import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.StationFigures;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The figures at one station of a flange. */
record StationForming(
    @Schema(description = "The station's number as in the file.") int station,
    @Schema(description = "Along the mould line from the first station, mm.") double arcMm,
    @Schema(
            description =
                "Radius of the mould line, mm, always positive; null where it is straight.")
        @Nullable Double radiusMm,
    FlangeKind kind,
    @Schema(description = "From flat, degrees.") double bendAngleDeg,
    @Schema(description = "To the outer mould line, mm.") double widthMm,
    double setbackMm,
    double bendAllowanceMm,
    @Schema(description = "Blank beyond the web's tangent line, mm.") double blankBeyondTangentMm,
    @Schema(description = "Natural strain of the free edge; negative where it shrinks.")
        double edgeStrain,
    double edgeThicknessMm,
    @Schema(description = "mm per metre of tangent line, positive to gather, negative to gain.")
        double gatherMmPerMetre,
    double ruffleRatio,
    @Nullable Double splitUtilisation,
    int passes,
    @Schema(description = "Block angle that allows for springback, degrees; null when unknown.")
        @Nullable Double blockAngleDeg,
    @Schema(
            description =
                "Tilt of the saw table for the block, degrees: block angle less 90, positive where"
                    + " the block leans in under its face; null when unknown.")
        @Nullable Double sawTiltDeg,
    @Schema(
            description =
                "Whether a cutout takes the flange away here: the figures are then as if it did"
                    + " not, and count in no sum and no peak.")
        boolean cutAway) {

  /** One for every station of a flange. */
  static List<StationForming> of(FlangeFigures figures) {
    var bevels = BevelTable.of(figures).rows();
    return IntStream.range(0, bevels.size())
        .mapToObj(i -> of(figures.stations().get(i), bevels.get(i).tiltDeg(), figures.isCutAway(i)))
        .toList();
  }

  private static StationForming of(
      StationFigures at, @Nullable Double sawTiltDeg, boolean cutAway) {
    return new StationForming(
        at.number(),
        at.arcMm(),
        InJson.finite(at.radiusMm()),
        at.kind(),
        at.bendAngleDeg(),
        at.flangeWidthMm(),
        at.setbackMm(),
        at.bendAllowanceMm(),
        at.blankBeyondTangentMm(),
        at.edgeStrain(),
        at.edgeThicknessMm(),
        at.section().gatherMmPerMetre(),
        at.ruffleRatio(),
        at.splitUtilisation(),
        at.passes(),
        at.blockAngleDeg(),
        sawTiltDeg,
        cutAway);
  }
}
