package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The fair fit of one piece of contour without corners: the first of the ever freer curves of
 * {@link KnotSearch} that lies within the tolerance (FM-FIT).
 */
final class FairPiece {

  /** The scatter of a tolerance is not felt over a chord of this many tolerances. */
  private static final double CHORD = 12;

  private final SpiralFit fit;
  private final int[] knots;
  private final List<double[]> hats;

  private FairPiece(SpiralFit fit, int[] knots, List<double[]> hats) {
    this.fit = fit;
    this.knots = knots;
    this.hats = hats;
  }

  /**
   * @param stations of the piece, at least two
   * @throws FormingException NO_FAIR_CURVE at the station farthest off
   */
  static FairPiece of(List<Station> stations, double tolerance) {
    var points = stations.stream().map(Station::point).toList();
    var near = SpiralFit.near(points, CHORD * tolerance);
    var search = new KnotSearch(near);
    double most = 1.5 * points.size() * tolerance * tolerance;
    int[] knots = {};
    int[] freer = knots;
    do {
      knots = freer;
      var run = search.straightRun(knots);
      double sum = run == null ? search.sumOfSquares(knots) : run.sumOfSquares();
      if (sum <= most) {
        var piece = run == null ? fitted(near, knots) : fitted(near, run);
        if (piece.fit.within(tolerance)) {
          return piece.straightened(tolerance);
        }
      }
      freer = search.grown(knots);
    } while (freer.length > knots.length && freer.length <= mostKnots(points.size()));
    throw fitted(near, knots).refusal(stations, tolerance);
  }

  /**
   * Fewer unknowns than stations by far: more would follow the scatter, and its curvature with it.
   */
  private static int mostKnots(int stations) {
    return Math.min(24, Math.max(Math.min((stations - 2) / 2, 3), stations / 3));
  }

  private static FairPiece fitted(SpiralFit near, int[] knots) {
    var hats = SpiralFit.hats(near.curve().grid(), knots);
    return new FairPiece(near.best(hats), knots, Arrays.asList(hats));
  }

  private static FairPiece fitted(SpiralFit near, StraightRun run) {
    var all = SpiralFit.hats(near.curve().grid(), run.knots());
    var hats = new ArrayList<>(Arrays.asList(all));
    hats.subList(run.first(), run.first() + 2).clear();
    return new FairPiece(near.best(hats.toArray(double[][]::new)), run.knots(), hats);
  }

  /** Without the knots whose curvature may be zero, those first that cost least. */
  private FairPiece straightened(double tolerance) {
    FairPiece best = null;
    for (int j = 0; j < hats.size(); j++) {
      var fewer = new ArrayList<>(hats);
      fewer.remove(j);
      var candidate = new FairPiece(fit.best(fewer.toArray(double[][]::new)), knots, fewer);
      boolean better = best == null || candidate.fit.sumOfSquares() < best.fit.sumOfSquares();
      if (candidate.fit.within(tolerance) && better) {
        best = candidate;
      }
    }
    return best == null ? this : best.straightened(tolerance);
  }

  /**
   * At the station that would stand farthest off if it were not fitted: d/(1 − h), h the share it
   * has in its own fitted place. A misread point draws the curve to itself.
   */
  private FormingException refusal(List<Station> stations, double tolerance) {
    var full = fit.curve().sensitivity(fit.feet());
    var rows = new double[full.length][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = SpiralFit.reduced(full[i], hats.toArray(double[][]::new));
    }
    var leastSquares = new LeastSquares(rows, fit.deviations());
    int worst = 0;
    double farthest = 0;
    for (int i = 0; i < rows.length; i++) {
      double free = Math.max(1e-6, 1 - leastSquares.variance(rows[i]));
      double off = Math.abs(fit.deviations()[i]) / free;
      worst = off > farthest ? i : worst;
      farthest = Math.max(off, farthest);
    }
    return FormingException.of(
            FormingException.Reason.NO_FAIR_CURVE,
            FormingInput.FIT_TOLERANCE.field(),
            tolerance,
            null)
        .at(stations.get(worst).number());
  }

  SpiralFit fit() {
    return fit;
  }

  /** Places of the knots, the straight ones among them. */
  int[] knots() {
    return knots;
  }

  int degreesOfFreedom() {
    return 2 + hats.size();
  }
}
