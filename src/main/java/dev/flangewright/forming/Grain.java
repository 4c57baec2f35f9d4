package dev.flangewright.forming;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which way the rolling grain should run through a blank: across the bend lines, as far as they
 * allow.
 *
 * <p>FM-GRAIN: for a grain direction φ, the share of the bend lines' length that lies within 30° of
 * parallel to it. Bend lines across the grain where there is a choice: FAA-H-8083-31, Aviation
 * Maintenance Technician Handbook, Airframe vol. 1, ch. 4. That 30° counts as along the grain is a
 * shop default, no source. All 180 whole degrees are tried; of equally good neighbours the middle
 * one is named.
 *
 * @param bestDeg grain direction from the x axis with the smallest share, degrees, 0 to 179
 * @param bestShare that share, 0 to 1
 * @param worstDeg the direction with the largest share
 * @param worstShare that share
 */
public record Grain(int bestDeg, double bestShare, int worstDeg, double worstShare) {

  /** A bend line this near to the grain counts as along it: shop default, no source. */
  public static final double NEARLY_PARALLEL_DEG = 30;

  private static final int DIRECTIONS = 180;

  /** Shares nearer than this are the same. */
  private static final double SAME = 1e-9;

  /** Advises on the bend lines of a part, each a line of points. */
  public static Grain across(List<List<Point>> bendLines) {
    double[] shares =
        IntStream.range(0, DIRECTIONS).mapToDouble(d -> shareAlong(bendLines, d)).toArray();
    double least = Arrays.stream(shares).min().getAsDouble();
    double most = Arrays.stream(shares).max().getAsDouble();
    int best = middle(shares, least);
    int worst = middle(shares, most);
    return new Grain(best, shares[best], worst, shares[worst]);
  }

  /** The middle of the longest spell of directions that share a value; directions go round. */
  private static int middle(double[] shares, double value) {
    int longest = 0;
    int middle = 0;
    for (int start = 0; start < DIRECTIONS; start++) {
      int length = 0;
      while (length < DIRECTIONS
          && Math.abs(shares[(start + length) % DIRECTIONS] - value) <= SAME) {
        length++;
      }
      if (length > longest) {
        longest = length;
        middle = (start + (length - 1) / 2) % DIRECTIONS;
      }
    }
    return middle;
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
