package dev.flangewright.forming;

import java.util.List;

/**
 * The curvature that a circle through three stations found.
 *
 * @param arc the arc position it belongs to, mm
 * @param value curvature, 1/mm
 * @param spread (p² + p·q + q²)/36, p and q the arms of the circle, mm²: what a curvature that bows
 *     by κ'' adds to the circle's is κ''·spread
 */
record CurvatureKnot(double arc, double value, double spread) {

  static CurvatureKnot of(double from, double middle, double to, double value) {
    double p = middle - from;
    double q = to - middle;
    return new CurvatureKnot((from + middle + to) / 3, value, (p * p + p * q + q * q) / 36);
  }

  double slopeTo(CurvatureKnot other) {
    return other.arc == arc ? 0 : (other.value - value) / (other.arc - arc);
  }

  /** The same circle without what a bow κ'' (1/mm³) of the curvature added to it. */
  CurvatureKnot without(double bow) {
    return new CurvatureKnot(arc, value - bow * spread, spread);
  }

  /** The next knot that is at least the reach (mm) away, or the last one that way. */
  static int beyond(List<CurvatureKnot> knots, int from, int step, double reach) {
    int i = from;
    while (i + step >= 0
        && i + step < knots.size()
        && Math.abs(knots.get(i).arc - knots.get(from).arc) < reach) {
      i += step;
    }
    return i;
  }
}
