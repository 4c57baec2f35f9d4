package dev.flangewright.forming;

import java.util.List;

/**
 * Which way the rolling grain should run through a blank: across the bend lines, as far as they
 * allow.
 *
 * <p>FM-GRAIN: for a grain direction φ, the share of the bend lines' length that lies within 30° of
 * parallel to it. Bend lines across the grain where there is a choice: FAA-H-8083-31, Aviation
 * Maintenance Technician Handbook, Airframe vol. 1, ch. 4. That 30° counts as along the grain is a
 * shop default, no source. All 180 whole degrees are tried.
 *
 * @param bestDeg grain direction from the x axis with the smallest share, degrees, 0 to 179
 * @param bestShare that share, 0 to 1
 * @param worstDeg the direction with the largest share
 * @param worstShare that share
 */
public record Grain(int bestDeg, double bestShare, int worstDeg, double worstShare) {

  /** A bend line this near to the grain counts as along it: shop default, no source. */
  public static final double NEARLY_PARALLEL_DEG = 30;

  /** Advises on the bend lines of a part, each a line of points. */
  public static Grain across(List<List<Point>> bendLines) {
    int best = 0;
    int worst = 0;
    for (int degrees = 1; degrees < 180; degrees++) {
      double share = shareAlong(bendLines, degrees);
      best = share < shareAlong(bendLines, best) - 1e-12 ? degrees : best;
      worst = share > shareAlong(bendLines, worst) + 1e-12 ? degrees : worst;
    }
    return new Grain(best, shareAlong(bendLines, best), worst, shareAlong(bendLines, worst));
  }

  /** Share of the bend lines within 30° of parallel to a grain direction, 0 to 1. */
  public static double shareAlong(List<List<Point>> bendLines, double grainDeg) {
    double along = 0;
    double total = 0;
    for (var line : bendLines) {
      for (int i = 1; i < line.size(); i++) {
        double length = line.get(i - 1).distanceMm(line.get(i));
        total += length;
        along += isAlong(line.get(i - 1).headingTo(line.get(i)), grainDeg) ? length : 0;
      }
    }
    return total == 0 ? 0 : along / total;
  }

  private static boolean isAlong(double heading, double grainDeg) {
    double off = Math.abs(Math.IEEEremainder(Math.toDegrees(heading) - grainDeg, 180));
    return off <= NEARLY_PARALLEL_DEG;
  }
}
