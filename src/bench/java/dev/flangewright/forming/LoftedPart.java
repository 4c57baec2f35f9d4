package dev.flangewright.forming;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A frame segment as a loft would give it, invented: an elliptic shrink flange outside, a stretch
 * flange inside, the bend angles following a taper. Coordinates to 0.01 mm, as a table prints them.
 */
record LoftedPart(List<Station> outer, List<Station> inner) {

  static final Sheet SHEET = Sheet.of(1, 3);

  /** Every value known, so that every figure is worked out; invented, of the order of aluminium. */
  static final MetalValues METAL = new MetalValues(15.0, 280.0, 420.0, 72_000.0, 2_780.0, 3.0);

  /**
   * @param stations on each of the two flanges
   * @param growthMm added to both half axes, so that no two parts are alike
   */
  static LoftedPart of(int stations, double growthMm) {
    double a = 600 + growthMm;
    double b = 420 + growthMm;
    double[] at = Loft.even(0.05, 1.55, stations);
    return new LoftedPart(
        bevelled(Loft.ellipse(a, b, at)),
        bevelled(Loft.reversed(Loft.ellipse(a - 100, b - 100, at))));
  }

  private static List<Station> bevelled(List<Point> points) {
    var rounded = Loft.rounded(points, 0.01);
    return IntStream.range(0, rounded.size())
        .mapToObj(i -> station(i, rounded.get(i), 82 + 16.0 * i / rounded.size()))
        .toList();
  }

  private static Station station(int i, Point p, double bendAngleDeg) {
    return new Station(i + 1, p.xMm(), p.yMm(), bendAngleDeg, Loft.WIDTH_MM);
  }

  static FlangeFigures figures(Contour contour) {
    return FlangeFigures.of(contour, SHEET, METAL, EdgeCondition.DEBURRED);
  }

  /** All that the part sheet shows of one width: contours, figures, flat outline. */
  PartDevelopment worked() {
    var contours = List.of(Contour.of(outer), Contour.of(inner));
    return PartDevelopment.of(contours, contours.stream().map(LoftedPart::figures).toList());
  }
}
