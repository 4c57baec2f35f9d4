package dev.flangewright.forming;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How far the curvature of a fair fit may be off.
 *
 * <pre>
 * FM-BAND  κ' ± t·s·√(w'(A'A)⁻¹w), widened to hold the fit's own κ
 *          s² = (Σd² + 3·(tol/2)²)/(n − p + 3)
 * κ' curvature of a freer fit: the same knots, the ends and three knots more in every gap, as far as there are stations; A its
 * sensitivities, w the weights of its knots at the station, p its unknowns, n stations, d its
 * deviations (mm), tol the tolerance (mm), t Student's 97.5 % point for n − p + 3
 * </pre>
 *
 * <p>The freer fit shows what the fewest degrees of freedom may have smoothed away; the tolerance
 * counts as three readings with half of it as their standard deviation, so that few stations do not
 * look surer than they are. Derived (linear least squares), the share of the tolerance and the
 * freer fit are a shop default, no source. Neglected: bends shorter than the freer fit's knots.
 */
final class CurvatureBand {

  private static final double PRIOR = 3;
  private static final int HALVINGS = 2;
  private static final double POINT = 0.975;

  private final KnotGrid grid;
  private final double[][] hats;
  private final LeastSquares fit;
  private final double[] solution;
  private final double halfWidth;

  CurvatureBand(FairPiece piece, double tolerance) {
    var curve = piece.fit().curve();
    this.grid = curve.grid();
    this.hats = SpiralFit.hats(grid, freer(piece.knots(), piece.fit().feet().length));
    var full = curve.sensitivity(piece.fit().feet());
    var rows = new double[full.length][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = SpiralFit.reduced(full[i], hats);
    }
    double[] target = piece.fit().target(full);
    this.fit = new LeastSquares(rows, target);
    this.solution = fit.solution();
    double sum = PRIOR * tolerance * tolerance / 4;
    for (int i = 0; i < rows.length; i++) {
      double deviation = target[i] - product(rows[i], solution);
      sum += deviation * deviation;
    }
    double freedom = Math.max(0, rows.length - solution.length) + PRIOR;
    this.halfWidth =
        new TDistribution(freedom).inverseCumulativeProbability(POINT) * Math.sqrt(sum / freedom);
  }

  /** As many of the wished-for knots as the stations can bear. */
  private int[] freer(int[] knots, int stations) {
    int[] best = knots.length > 0 ? knots : new int[] {0};
    var more = new TreeSet<Integer>(List.of(0, grid.cells()));
    Arrays.stream(knots).forEach(more::add);
    for (int halving = 0; halving <= HALVINGS && 2 + more.size() <= stations * 5 / 8; halving++) {
      best = more.stream().mapToInt(Integer::intValue).toArray();
      for (int j = 1; j < best.length; j++) {
        more.add((best[j - 1] + best[j]) / 2);
      }
    }
    return best;
  }

  double low(double arc, double fitted) {
    return Math.min(fitted, centre(arc) - half(arc));
  }

  double high(double arc, double fitted) {
    return Math.max(fitted, centre(arc) + half(arc));
  }

  private double centre(double arc) {
    return product(weights(arc), solution);
  }

  private double half(double arc) {
    return halfWidth * Math.sqrt(fit.variance(weights(arc)));
  }

  private double[] weights(double arc) {
    var weights = new double[2 + hats.length];
    for (int j = 0; j < hats.length; j++) {
      weights[j + 2] = grid.between(hats[j], arc);
    }
    return weights;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
