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
      if (search.sumOfSquares(knots) <= most) {
        var piece = fitted(near, knots);
        if (piece.fit.within(tolerance)) {
          return piece.straightened(tolerance);
        }
      }
      freer = search.grown(knots);
    } while (freer.length > knots.length && freer.length <= mostKnots(points.size()));
    throw refusal(stations, fitted(near, knots).fit, tolerance);
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

  private static FormingException refusal(List<Station> stations, SpiralFit fit, double tolerance) {
    int worst = 0;
    for (int i = 1; i < stations.size(); i++) {
      worst = Math.abs(fit.deviations()[i]) > Math.abs(fit.deviations()[worst]) ? i : worst;
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
