package dev.flangewright.forming;

import java.util.Arrays;
import java.util.List;

/**
 * A {@link SpiralCurve} beside the points it is fitted to, and the steps of its fit.
 *
 * <p>FM-FIT, the least squares: Gauss-Newton on the perpendicular deviations. A step solves for the
 * shift and turn of the start and for the curvatures at the knots of a model at once; every curve
 * near the points has nearly the same sensitivities, so two or three steps are enough. Derived.
 */
final class SpiralFit {

  private static final int STEPS = 12;
  private static final double SETTLED_MM = 1e-7;
  private static final double STIFFNESS = 0.3;
  private static final double GROUND = 1e-4;

  private final List<Point> points;
  private final SpiralCurve curve;
  private final double[] feet;
  private final double[] deviations;

  private SpiralFit(List<Point> points, SpiralCurve curve, double[] guesses) {
    this.points = points;
    this.curve = curve;
    this.feet = new double[guesses.length];
    this.deviations = new double[guesses.length];
    for (int i = 0; i < feet.length; i++) {
      feet[i] = curve.foot(points.get(i), guesses[i]);
      deviations[i] = curve.deviation(points.get(i), feet[i]);
    }
  }

  /**
   * A curve near the points, to choose knots from: many knots, held together by a penalty on the
   * changes of slope, as if a change that bends one space of the grid off by 1 mm were a deviation
   * of 0.3 mm.
   *
   * @param spacingMm the scatter is not felt between points this far apart
   */
  static SpiralFit near(List<Point> points, double spacingMm) {
    var chain = PointChain.through(points, spacingMm);
    var grid = KnotGrid.of(chain.lengthMm(), points.size());
    int[] knots = grid.spread(grid.cells() / 2 + 1);
    var hats = hats(grid, knots);
    var curve = chain.curve(grid, hats, penalty(grid, knots.length, 0));
    var fit = new SpiralFit(points, curve, chain.arcs());
    for (int i = 0; i < 3; i++) {
      fit = fit.step(hats, penalty(grid, knots.length, 2)).regridded();
    }
    return fit;
  }

  /** With a grid from the first foot to the last, so that either end may come first. */
  private SpiralFit regridded() {
    double from = feet[0];
    double length = Math.max(0.5 * curve.grid().lengthMm(), feet[feet.length - 1] - from);
    var grid = KnotGrid.of(length, points.size());
    var curvature = new double[grid.places()];
    for (int place = 0; place < curvature.length; place++) {
      curvature[place] = curve.curvaturePerMm(from + length * place / grid.cells());
    }
    var again = new SpiralCurve(grid, curve.at(from), curve.heading(from), curvature);
    return new SpiralFit(points, again, Arrays.stream(feet).map(foot -> foot - from).toArray());
  }

  private static double[][] penalty(KnotGrid grid, int knots, int before) {
    double square = Math.pow(grid.lengthMm() / (knots - 1), 2);
    var rows = new double[2 * knots - 2][before + knots];
    for (int i = 0; i < knots; i++) {
      rows[i][before + i] = GROUND * square;
    }
    for (int i = 0; i < knots - 2; i++) {
      rows[knots + i][before + i] = STIFFNESS * square;
      rows[knots + i][before + i + 1] = -2 * STIFFNESS * square;
      rows[knots + i][before + i + 2] = STIFFNESS * square;
    }
    return rows;
  }

  /** One hat for every knot. */
  static double[][] hats(KnotGrid grid, int[] knots) {
    var hats = new double[knots.length][];
    for (int j = 0; j < knots.length; j++) {
      hats[j] = grid.hat(knots, j);
    }
    return hats;
  }

  /** The best curve whose curvature is a sum of the given hats, or of none: a straight line. */
  SpiralFit best(double[][] hats) {
    var fit = this;
    double moved = Double.POSITIVE_INFINITY;
    for (int i = 0; i < STEPS && moved > SETTLED_MM; i++) {
      var next = fit.step(hats, new double[0][]);
      moved = next.movedFrom(fit);
      fit = next;
    }
    return fit;
  }

  private double movedFrom(SpiralFit other) {
    double largest = 0;
    for (int i = 0; i < deviations.length; i++) {
      largest = Math.max(largest, Math.abs(deviations[i] - other.deviations[i]));
    }
    return largest;
  }

  private SpiralFit step(double[][] hats, double[][] penalty) {
    var full = curve.sensitivity(feet);
    var rows = new double[full.length + penalty.length][];
    for (int i = 0; i < full.length; i++) {
      rows[i] = reduced(full[i], hats);
    }
    System.arraycopy(penalty, 0, rows, full.length, penalty.length);
    var target = Arrays.copyOf(target(full), rows.length);
    return moved(new LeastSquares(rows, target).solution(), hats);
  }

  private SpiralFit moved(double[] x, double[][] hats) {
    var curvature = new double[curve.grid().places()];
    for (int j = 0; j < hats.length; j++) {
      for (int place = 0; place < curvature.length; place++) {
        curvature[place] += x[j + 2] * hats[j][place];
      }
    }
    double heading = curve.startHeading();
    var start = curve.start().toTheRight(heading, -x[0]);
    return new SpiralFit(
        points, new SpiralCurve(curve.grid(), start, heading + x[1], curvature), feet);
  }

  /** Shift, turn, and one column for every hat. */
  static double[] reduced(double[] row, double[][] hats) {
    var reduced = new double[2 + hats.length];
    reduced[0] = row[0];
    reduced[1] = row[1];
    for (int j = 0; j < hats.length; j++) {
      for (int place = 0; place < hats[j].length; place++) {
        if (hats[j][place] != 0) {
          reduced[j + 2] += row[place + 2] * hats[j][place];
        }
      }
    }
    return reduced;
  }

  /** What the curvatures would have to add up to for no deviation at all, mm. */
  double[] target(double[][] sensitivity) {
    var target = deviations.clone();
    for (int i = 0; i < target.length; i++) {
      for (int place = 0; place < curve.curvature().length; place++) {
        target[i] += sensitivity[i][place + 2] * curve.curvature()[place];
      }
    }
    return target;
  }

  List<Point> points() {
    return points;
  }

  SpiralCurve curve() {
    return curve;
  }

  /** Arc positions of the points' perpendiculars, mm. */
  double[] feet() {
    return feet;
  }

  /** Positive to the left, mm. */
  double[] deviations() {
    return deviations;
  }

  double sumOfSquares() {
    double sum = 0;
    for (double deviation : deviations) {
      sum += deviation * deviation;
    }
    return sum;
  }

  /** 95 % of the points within the tolerance and all within one and a half times it. */
  boolean within(double tolerance) {
    int outside = 0;
    for (double deviation : deviations) {
      if (!(Math.abs(deviation) <= 1.5 * tolerance)) {
        return false;
      }
      outside += Math.abs(deviation) > tolerance ? 1 : 0;
    }
    return outside <= 0.05 * deviations.length;
  }
}
