package dev.flangewright.forming;

import java.util.Comparator;
import java.util.List;

/**
 * Curvature along the contour, carried from the circles to the stations.
 *
 * <p>FM-CURV, second part: between two circles the curvature is interpolated linearly along the
 * arc, a weighted mean, which cannot overshoot or ring; a jump from straight to arc is smeared over
 * one arm and one gap between stations. {@link CurvatureBow} takes off what circles and straight
 * lines add where the curvature bows smoothly. Towards an end the line is carried on with the slope
 * that the last three circles suggest, but never a steeper one than between the last two, never
 * beyond a quarter more than the outermost value and never through zero. Derived; the limits are a
 * shop default, no source.
 */
final class CurvatureLine {

  private static final double END_GROWTH = 1.25;

  private final List<CurvatureKnot> knots;
  private final CurvatureBow bow;
  private final double reach;

  /**
   * @param circles in any order
   * @param reach how far apart circles must be for their difference to count as a slope, mm
   */
  CurvatureLine(List<CurvatureKnot> circles, double reach) {
    var sorted = circles.stream().sorted(Comparator.comparingDouble(CurvatureKnot::arc)).toList();
    this.bow = new CurvatureBow(sorted, reach);
    this.knots = bow.sharpened();
    this.reach = reach;
  }

  /** The curvature at an arc position, 1/mm; zero when there is no circle at all. */
  double at(double arc) {
    if (knots.isEmpty()) {
      return 0;
    }
    int last = knots.size() - 1;
    if (arc <= knots.get(0).arc()) {
      return carriedOn(arc, 0, +1);
    }
    return arc >= knots.get(last).arc() ? carriedOn(arc, last, -1) : between(arc);
  }

  private double between(double arc) {
    int low = 0;
    int high = knots.size() - 1;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      low = knots.get(middle).arc() <= arc ? middle : low;
      high = knots.get(middle).arc() <= arc ? high : middle;
    }
    var before = knots.get(low);
    double straight = before.value() + before.slopeTo(knots.get(high)) * (arc - before.arc());
    return straight - bow.underChord(low, arc);
  }

  private double carriedOn(double arc, int end, int inward) {
    int second = CurvatureKnot.beyond(knots, end, inward, reach);
    int third = CurvatureKnot.beyond(knots, second, inward, reach);
    var knot = knots.get(end);
    double slope = endSlope(arc, knot, knots.get(second), knots.get(third));
    double value = knot.value() + slope * (arc - knot.arc());
    double limit = END_GROWTH * knot.value();
    return Math.max(Math.min(0, limit), Math.min(Math.max(0, limit), value));
  }

  /** The slope half way from the end circle to the arc position, by the change of the slopes. */
  private static double endSlope(
      double arc, CurvatureKnot end, CurvatureKnot second, CurvatureKnot third) {
    double outer = end.slopeTo(second);
    if (third.arc() == second.arc()) {
      return outer;
    }
    double inner = second.slopeTo(third);
    double beyond = (arc - second.arc()) / (end.arc() - third.arc());
    double carried = outer + (outer - inner) * beyond;
    if (carried * outer <= 0) {
      return 0;
    }
    return Math.abs(carried) < Math.abs(outer) ? carried : outer;
  }
}
