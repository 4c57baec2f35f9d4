package dev.flangewright.parts.web;

import dev.flangewright.forming.FairFit;
import dev.flangewright.forming.FitStation;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.StrainBand;
import dev.flangewright.parts.ContourOf;
import dev.flangewright.parts.FlangeToFigure;
import dev.flangewright.parts.PartFigures;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How well the contour of a flange agrees with its stations. */
@Schema(name = "ContourFit")
record FitAnswer(
    @Schema(description = "As set, mm; 0 where the stations are exact.") double toleranceMm,
    @Schema(description = "Used by the fit; two for every station where they are exact.")
        int degreesOfFreedom,
    @Schema(description = "Largest distance of a station from the contour, mm.")
        double maxDeviationMm,
    @Schema(description = "The number of the station farthest off, as in the file.")
        int worstStation,
    @Schema(description = "Root mean square of the deviations, mm.") double rmsDeviationMm,
    @Schema(description = "Share of the stations within the tolerance, from 0 to 1.")
        double shareWithin,
    @Schema(
            description =
                "The peak edge strain at the most shrinking end of the curvature's band; null when"
                    + " the stations are exact or no flange can be made there.")
        @Nullable Double peakEdgeStrainLow,
    @Schema(description = "The same at the most stretching end.")
        @Nullable Double peakEdgeStrainHigh,
    @Schema(description = "Changes of direction that no fair curve explains.")
        List<CornerAnswer> corners,
    @Schema(description = "Station by station; empty where they are exact.")
        List<OfStation> stations) {

  /** A station against the fit. */
  @Schema(name = "FittedStation")
  record OfStation(
      @Schema(description = "The station's number as in the file.") int station,
      @Schema(description = "Off the fit, mm, positive towards the web.") double deviationMm,
      @Schema(description = "1/mm, positive where the edge shrinks.") double curvaturePerMm,
      @Schema(description = "Lower end of the band, 1/mm.") double curvatureLowPerMm,
      @Schema(description = "Upper end of the band, 1/mm.") double curvatureHighPerMm) {

    static OfStation of(FitStation at) {
      return new OfStation(
          at.number(),
          at.deviationMm(),
          at.curvaturePerMm(),
          at.curvatureLowPerMm(),
          at.curvatureHighPerMm());
    }
  }

  static FitAnswer of(PartFigures part, PartFigures.OfFlange figured) {
    FlangeToFigure flange = figured.flange();
    FairFit fit = ContourOf.fit(flange.stations(), flange.drawn());
    boolean exact = fit.toleranceMm() == 0;
    StrainBand peak = exact ? null : peak(part, figured, fit);
    return new FitAnswer(
        fit.toleranceMm(),
        fit.degreesOfFreedom(),
        fit.maxDeviationMm(),
        fit.worst().number(),
        fit.rmsDeviationMm(),
        fit.shareWithin(),
        peak == null ? null : peak.low(),
        peak == null ? null : peak.high(),
        fit.corners().stream().map(CornerAnswer::of).toList(),
        exact ? List.of() : fit.stations().stream().map(OfStation::of).toList());
  }

  private static @Nullable StrainBand peak(
      PartFigures part, PartFigures.OfFlange figured, FairFit fit) {
    try {
      return FitView.peakBand(part, figured, fit);
    } catch (FormingException beyond) {
      return null;
    }
  }
}
