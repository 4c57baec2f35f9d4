package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Arc length and signed curvature of a contour at its stations.
 *
 * <pre>
 * FM-ARC   s += c·asin(x)/x, x = κ·c/2          c chord between neighbours (mm), κ mean curvature of
 *                                               its two ends (1/mm)
 * FM-CURV  κ = 4A/(abc) = 2·sin(angle)/chord    circle through three stations, positive to the left,
 *          taken to hold at the mean arc position of the three, and interpolated linearly between
 * </pre>
 *
 * <p>The circle through three points is exact on circles and straight runs; at the mean arc
 * position of its points it is of second order for any spacing (divided differences). The circle's
 * arms are widened, the shorter one first, until they reach 15 mm or the middle station stands 0.5
 * mm off the chord, so that closely spaced stations do not turn the rounding of their coordinates
 * into curvature. Interpolation is a weighted mean: it cannot overshoot or ring; at a jump from
 * straight to arc the curvature is smeared over one arm's length. Towards the ends the line is
 * carried on, but by at most a quarter of the outermost value, and never through zero.
 *
 * <p>Errors: coordinates rounded to 0.01 mm give a curvature error of about 0.007/L² (one standard
 * deviation, L the arm in mm), that is 3e-5/mm at 15 mm; a peak over many stations errs high by two
 * or three of these. Source: the circle and its divided difference are derived; the reach and the
 * limits are a shop default, no source.
 */
final class Curvature {

  private static final double REACH_MM = 15;
  private static final double OFFSET_MM = 0.5;
  private static final double END_GROWTH = 1.25;

  private final List<Point> points;
  private final double[] arcs;
  private final double[] values;

  /** At least two points, no two neighbours on each other. */
  Curvature(List<Point> points) {
    this.points = points;
    this.arcs = new double[points.size()];
    this.values = new double[points.size()];
    measureArcs();
    spread(circles());
    measureArcs();
    spread(circles());
  }

  /** Length along the contour from the first point, mm. */
  double arcMm(int i) {
    return arcs[i];
  }

  /** Curvature, 1/mm, positive where the contour turns left. */
  double perMm(int i) {
    return values[i];
  }

  /** A curvature and the arc position it belongs to. */
  private record Circle(double at, double value) {}

  private void measureArcs() {
    for (int i = 1; i < arcs.length; i++) {
      double chord = points.get(i - 1).distanceMm(points.get(i));
      double x = Math.min(1, Math.abs(values[i - 1] + values[i]) / 4 * chord);
      arcs[i] = arcs[i - 1] + (x < 1e-8 ? chord : chord * Math.asin(x) / x);
    }
  }

  private List<Circle> circles() {
    var full = new ArrayList<Circle>();
    var cramped = new ArrayList<Circle>();
    for (int i = 1; i < arcs.length - 1; i++) {
      int from = i - 1;
      int to = i + 1;
      boolean room = true;
      while (room && tooNarrow(from, i, to)) {
        boolean widenBack = arcs[i] - arcs[from] <= arcs[to] - arcs[i];
        room = widenBack ? from > 0 : to < arcs.length - 1;
        from -= room && widenBack ? 1 : 0;
        to += room && !widenBack ? 1 : 0;
      }
      (room ? full : cramped).add(circle(from, i, to));
    }
    var usable = full.isEmpty() ? cramped : full;
    usable.sort(Comparator.comparingDouble(Circle::at));
    return usable;
  }

  private boolean tooNarrow(int from, int i, int to) {
    double arm = Math.min(arcs[i] - arcs[from], arcs[to] - arcs[i]);
    double offset = points.get(i).leftOf(points.get(from), points.get(to));
    return arm < REACH_MM && Math.abs(offset) < OFFSET_MM;
  }

  private Circle circle(int from, int i, int to) {
    var a = points.get(from);
    var b = points.get(i);
    var c = points.get(to);
    double offset = b.leftOf(a, c);
    double value = -2 * offset / (a.distanceMm(b) * b.distanceMm(c));
    return new Circle((arcs[from] + arcs[i] + arcs[to]) / 3, value);
  }

  private void spread(List<Circle> circles) {
    for (int i = 0; i < values.length && !circles.isEmpty(); i++) {
      values[i] = at(arcs[i], circles);
    }
  }

  private double at(double arc, List<Circle> circles) {
    int n = circles.size();
    if (arc <= circles.get(0).at) {
      return carriedOn(arc, circles.get(0), partner(circles, 0, 1));
    }
    if (arc >= circles.get(n - 1).at) {
      return carriedOn(arc, circles.get(n - 1), partner(circles, n - 1, -1));
    }
    int after = 1;
    while (circles.get(after).at < arc) {
      after++;
    }
    return line(arc, circles.get(after - 1), circles.get(after));
  }

  /** The circle that sets the slope at an end: at least a reach away where there is one. */
  private static Circle partner(List<Circle> circles, int end, int step) {
    int i = end;
    while (i + step >= 0
        && i + step < circles.size()
        && Math.abs(circles.get(i).at - circles.get(end).at) < REACH_MM) {
      i += step;
    }
    return circles.get(i);
  }

  private static double carriedOn(double arc, Circle end, Circle inner) {
    double value = line(arc, end, inner);
    double limit = end.value * END_GROWTH;
    return end.value >= 0
        ? Math.max(0, Math.min(limit, value))
        : Math.min(0, Math.max(limit, value));
  }

  private static double line(double arc, Circle a, Circle b) {
    double span = b.at - a.at;
    return span == 0 ? a.value : a.value + (b.value - a.value) * (arc - a.at) / span;
  }
}
