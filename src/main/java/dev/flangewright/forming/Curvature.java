package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;

/**
 * Arc length and signed curvature of a contour at its stations.
 *
 * <pre>
 * FM-ARC   s += c·asin(x)/x, x = κ·c/2    c chord between neighbours (mm), κ mean curvature of its
 *                                         two ends (1/mm)
 * FM-CURV  κ = 2h/(a·b)                   circle through three stations: h distance of the middle
 *          one from the chord of the others, a and b its distances from them (mm); positive to the
 *          left; taken to hold at the mean arc position of the three
 * </pre>
 *
 * <p>The circle through three points is exact on circles and straight runs; at the mean arc
 * position of its points it is of second order for any spacing (a second divided difference), and
 * {@link CurvatureBow} takes off the second-order error where the curvature is smooth. Its arms are
 * widened, the shorter one first, until they reach 20 mm or the middle station stands 0.5 mm off
 * the chord, so that closely spaced stations do not turn the rounding of their coordinates into
 * curvature. Circles that the contour's end does not leave room for are used only when there are no
 * others. {@link CurvatureLine} carries the values from the circles to the stations.
 *
 * <p>Errors: with coordinates rounded to δ the curvature is off by about 0.7·δ/L² (one standard
 * deviation; L the arm, mm) and at worst by 2.83·δ/L²: for δ = 0.01 mm and L = 20 mm 2e-5/mm, at
 * worst 7e-5/mm, that is 0.04 % or 0.14 % of strain on a 20 mm flange; within 60 mm of an end up to
 * about 5·δ/L² (measured). A peak over many stations errs high. Bends shorter than an arm are
 * smoothed, so their peak errs low. Source: circle and divided difference derived; reach and offset
 * are a shop default, no source.
 */
final class Curvature {

  private static final double REACH_MM = 20;
  private static final double OFFSET_MM = 0.5;

  private final List<Point> points;
  private final double[] arcs;
  private final double[] values;

  /** At least two points, no two neighbours on each other. */
  Curvature(List<Point> points) {
    this.points = points;
    this.arcs = new double[points.size()];
    this.values = new double[points.size()];
    measureArcs();
    measureCurvature();
    measureArcs();
    measureCurvature();
  }

  /** Arc lengths (mm) and curvatures (1/mm) known from elsewhere. */
  Curvature(List<Point> points, double[] arcs, double[] values) {
    this.points = points;
    this.arcs = arcs.clone();
    this.values = values.clone();
  }

  /** Length along the contour from the first point, mm. */
  double arcMm(int i) {
    return arcs[i];
  }

  /** Curvature, 1/mm, positive where the contour turns left. */
  double perMm(int i) {
    return values[i];
  }

  /** Chords first; once the curvature is known, the arcs over them. */
  private void measureArcs() {
    for (int i = 1; i < arcs.length; i++) {
      double chord = points.get(i - 1).distanceMm(points.get(i));
      double x = Math.min(1, Math.abs(values[i - 1] + values[i]) / 4 * chord);
      arcs[i] = arcs[i - 1] + (x < 1e-8 ? chord : chord * Math.asin(x) / x);
    }
  }

  private void measureCurvature() {
    var line = new CurvatureLine(circles(), REACH_MM);
    for (int i = 0; i < values.length; i++) {
      values[i] = line.at(arcs[i]);
    }
  }

  private List<CurvatureKnot> circles() {
    var roomy = new ArrayList<CurvatureKnot>();
    var cramped = new ArrayList<CurvatureKnot>();
    for (int i = 1; i < arcs.length - 1; i++) {
      int from = i - 1;
      int to = i + 1;
      boolean room = true;
      while (room && tooNarrow(from, i, to)) {
        boolean back = arcs[i] - arcs[from] <= arcs[to] - arcs[i];
        room = back ? from > 0 : to < arcs.length - 1;
        from -= room && back ? 1 : 0;
        to += room && !back ? 1 : 0;
      }
      (room ? roomy : cramped).add(circle(from, i, to));
    }
    return roomy.isEmpty() ? cramped : roomy;
  }

  private boolean tooNarrow(int from, int i, int to) {
    double arm = Math.min(arcs[i] - arcs[from], arcs[to] - arcs[i]);
    double offset = points.get(i).leftOf(points.get(from), points.get(to));
    return arm < REACH_MM && Math.abs(offset) < OFFSET_MM;
  }

  private CurvatureKnot circle(int from, int i, int to) {
    var a = points.get(from);
    var b = points.get(i);
    var c = points.get(to);
    double value = -2 * b.leftOf(a, c) / (a.distanceMm(b) * b.distanceMm(c));
    return CurvatureKnot.of(arcs[from], arcs[i], arcs[to], value);
  }
}
