package dev.flangewright.forming;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How the curvature bows away from a straight rise or fall, κ'' in 1/mm³, where it does so
 * smoothly.
 *
 * <pre>
 * FM-CURV  κ'' = second divided difference of the circles a reach apart, in size at most twice the
 *          smallest one within a reach on either side and 0.005·|κ|·36/(p² + p·q + q²); zero where
 *          these differ in sign
 * κ the circle's curvature (1/mm), p and q its arms (mm)
 * </pre>
 *
 * <p>A circle averages the curvature under its arms, which adds κ''·(p² + p·q + q²)/36, and a
 * straight line between two circles at arc positions a and b adds κ''·(s − a)·(b − s)/2 at s. Both
 * are taken off, which leaves terms of third order and, evenly spaced, of fourth. At a jump or a
 * kink of the curvature the second differences within a reach have both signs, or one of them is
 * zero: nothing is taken off there, so nothing rings. A bend shorter than about three arms looks
 * smooth even where it jumps; the half per cent of κ bounds what it may be overshot by, about 1.2 %
 * with the line between the circles. Derived; twice and half a per cent are shop defaults, no
 * source.
 */
final class CurvatureBow {

  private static final double SMALLEST_NEARBY = 2;
  private static final double SHARE_OF_CURVATURE = 0.005;

  private final List<CurvatureKnot> circles;
  private final double reach;
  private final double[] differences;
  private final double[] bows;

  /**
   * @param circles in order of arc position
   * @param reach how far apart circles must be for their difference to count, mm
   */
  CurvatureBow(List<CurvatureKnot> circles, double reach) {
    this.circles = circles;
    this.reach = reach;
    int n = circles.size();
    this.differences = IntStream.range(0, n).mapToDouble(this::difference).toArray();
    this.bows = IntStream.range(0, n).mapToDouble(this::limited).toArray();
  }

  /** The circles without what the bow of the curvature under their arms added. */
  List<CurvatureKnot> sharpened() {
    return IntStream.range(0, bows.length).mapToObj(i -> circles.get(i).without(bows[i])).toList();
  }

  /** What the straight line from the i-th circle to the next adds at an arc position, 1/mm. */
  double underChord(int i, double arc) {
    double before = arc - circles.get(i).arc();
    double after = circles.get(i + 1).arc() - arc;
    double length = before + after;
    return length == 0 ? 0 : (bows[i] * after + bows[i + 1] * before) / length * before * after / 2;
  }

  private int before(int i) {
    return CurvatureKnot.beyond(circles, i, -1, reach);
  }

  private int after(int i) {
    return CurvatureKnot.beyond(circles, i, +1, reach);
  }

  /** Not a number where an end leaves no room. */
  private double difference(int i) {
    var middle = circles.get(i);
    var before = circles.get(before(i));
    var after = circles.get(after(i));
    boolean room = middle.arc() - before.arc() >= reach && after.arc() - middle.arc() >= reach;
    double change = middle.slopeTo(after) - before.slopeTo(middle);
    return room ? 2 * change / (after.arc() - before.arc()) : Double.NaN;
  }

  private double limited(int i) {
    double nearby = smallest(nearby(i));
    double own = Double.isNaN(differences[i]) ? nearby : differences[i];
    double size = Math.min(Math.abs(own), SMALLEST_NEARBY * Math.abs(nearby));
    var circle = circles.get(i);
    double most = SHARE_OF_CURVATURE * Math.abs(circle.value()) / circle.spread();
    return Math.signum(nearby) * Math.min(size, most);
  }

  private DoubleSummaryStatistics nearby(int i) {
    return IntStream.rangeClosed(before(i), after(i))
        .mapToDouble(k -> differences[k])
        .filter(difference -> !Double.isNaN(difference))
        .summaryStatistics();
  }

  /** The one nearest to zero; zero when there is none or the signs differ. */
  private static double smallest(DoubleSummaryStatistics nearby) {
    boolean oneSign = nearby.getMin() > 0 || nearby.getMax() < 0;
    if (nearby.getCount() == 0 || !oneSign) {
      return 0;
    }
    return nearby.getMin() > 0 ? nearby.getMin() : nearby.getMax();
  }
}
