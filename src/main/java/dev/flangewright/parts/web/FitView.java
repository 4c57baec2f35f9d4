package dev.flangewright.parts.web;

import dev.flangewright.forming.Corner;
import dev.flangewright.forming.FairFit;
import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.StrainBand;
import dev.flangewright.parts.ContourOf;
import dev.flangewright.parts.FlangeToFigure;
import dev.flangewright.parts.PartFigures;
import dev.flangewright.parts.drawing.CurvatureGraph;
import dev.flangewright.parts.drawing.DeviationGraph;
import java.util.List;

/**
 * How well the contour of a flange agrees with its stations.
 *
 * @param deviations trusted SVG of how far the stations lie off; empty where they are exact
 * @param curvature trusted SVG of the curvature and its band; empty where the stations are exact
 * @param peak how sure the largest strain is; empty where the stations are exact
 */
record FitView(
    String deviations, String curvature, String sentence, String peak, List<String> corners) {

  static FitView of(PartFigures part, PartFigures.OfFlange figured) {
    FlangeToFigure flange = figured.flange();
    FairFit fit = ContourOf.fit(flange.stations(), flange.drawn());
    List<String> corners = fit.corners().stream().map(FitView::corner).toList();
    if (fit.toleranceMm() == 0) {
      return new FitView("", "", "The contour runs through every station.", "", corners);
    }
    String number = part.part().partNumber();
    return new FitView(
        DeviationGraph.of("off-" + flange.id(), number, flange.name(), fit),
        CurvatureGraph.of("curvature-" + flange.id(), number, flange.name(), fit),
        sentence(fit),
        peak(part, figured, fit),
        corners);
  }

  private static String sentence(FairFit fit) {
    return ("A fair curve of %d degrees of freedom through %d stations. Farthest off is station %d,"
            + " by %s; root mean square %s; %s of the stations lie within the tolerance of %s.")
        .formatted(
            fit.degreesOfFreedom(),
            fit.stations().size(),
            fit.worst().number(),
            Figure.mm(fit.maxDeviationMm(), 2),
            Figure.mm(fit.rmsDeviationMm(), 2),
            Figure.percent(fit.shareWithin(), 0),
            Figure.mm(fit.toleranceMm(), 2));
  }

  private static String peak(PartFigures part, PartFigures.OfFlange figured, FairFit fit) {
    int station = figured.working().peakStation();
    String most = Figure.percent(figured.working().peakEdgeStrain(), 1).toString();
    try {
      StrainBand band = peakBand(part, figured, fit);
      return "Peak edge strain %s at station %d, between %s and %s as sure as the readings allow."
          .formatted(most, station, Figure.percent(band.low(), 1), Figure.percent(band.high(), 1));
    } catch (FormingException beyond) {
      return "Peak edge strain %s at station %d; as the readings allow it may be tighter than can be made."
          .formatted(most, station);
    }
  }

  /**
   * @throws FormingException where the flange could not be made at one end of the band
   */
  static StrainBand peakBand(PartFigures part, PartFigures.OfFlange figured, FairFit fit) {
    int i = 0;
    while (fit.stations().get(i).number() != figured.working().peakStation()) {
      i++;
    }
    return fit.stations().get(i).edgeStrain(part.sheet(), fit.contour().stations().get(i));
  }

  private static String corner(Corner corner) {
    return "Station %d: a corner of %s to the %s."
        .formatted(
            corner.stationNumber(),
            Figure.of(Math.abs(corner.turnDeg()), 0, "°"),
            corner.turnDeg() > 0 ? "left" : "right");
  }
}
