package dev.flangewright.parts.web;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.Station;
import dev.flangewright.parts.DrawnContour;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** A contour taken from a drawn path. */
record ContourAnswer(
    @Schema(description = "What the contour makes of a flange whose web lies to its left.")
        FlangeKind kind,
    @Schema(description = "Along the mould line, mm.") double lengthMm,
    @Schema(description = "In the frame's axes, y up.") List<OfStation> stations,
    @Schema(description = "Changes of direction that no fair curve explains.")
        List<CornerAnswer> corners,
    String caution) {

  /** A station on the path. */
  @Schema(name = "StationOfPath")
  record OfStation(
      @Schema(description = "Counted from 1.") int station,
      double xMm,
      double yMm,
      @Schema(description = "From flat, degrees.") double bendAngleDeg,
      @Schema(description = "To the outer mould line, mm.") double widthMm) {

    static OfStation of(Station at) {
      return new OfStation(at.number(), at.xMm(), at.yMm(), at.bendAngleDeg(), at.widthMm());
    }
  }

  static ContourAnswer of(DrawnContour drawn) {
    return new ContourAnswer(
        drawn.contour().kind(),
        drawn.contour().lengthMm(),
        drawn.contour().stations().stream().map(OfStation::of).toList(),
        drawn.corners().stream().map(CornerAnswer::of).toList(),
        InJson.CAUTION);
  }
}
