package dev.flangewright.forming;

import java.util.Arrays;

/**
 * A straight run laid between two knots of a broken line of curvature.
 *
 * <p>FM-FIT, straight runs: two knots of no curvature cost no freedom, so a fit with a straight run
 * between two of its knots is as free as the one without. The pair is tried at all places between
 * all neighbouring knots, then every knot is moved while that lowers the sum of squares.
 */
final class StraightRun {

  private static final int ROUNDS = 6;

  private final KnotSearch search;
  private final int places;
  private int[] knots;
  private int first;
  private double least;

  private StraightRun(KnotSearch search, int places, int[] knots) {
    this.search = search;
    this.places = places;
    this.knots = knots;
    this.first = -1;
    this.least = Double.POSITIVE_INFINITY;
  }

  /** The best straight run between these knots, which must be two at least. */
  static StraightRun between(KnotSearch search, int places, int[] knots) {
    var run = new StraightRun(search, places, knots);
    for (int gap = 1; gap < knots.length; gap++) {
      run.layWithin(knots, gap);
    }
    run.settle();
    return run;
  }

  private void layWithin(int[] around, int gap) {
    for (int from = around[gap - 1] + 1; from < around[gap]; from++) {
      for (int to = from + 1; to < around[gap]; to++) {
        int[] candidate = new int[around.length + 2];
        System.arraycopy(around, 0, candidate, 0, gap);
        candidate[gap] = from;
        candidate[gap + 1] = to;
        System.arraycopy(around, gap, candidate, gap + 2, around.length - gap);
        take(candidate, gap);
      }
    }
  }

  private boolean take(int[] candidate, int straight) {
    double sum = search.sumOfSquares(candidate, straight);
    if (!(sum < least)) {
      return false;
    }
    least = sum;
    knots = candidate;
    first = straight;
    return true;
  }

  private void settle() {
    boolean gained = first >= 0;
    for (int round = 0; gained && round < ROUNDS; round++) {
      gained = false;
      for (int j = 0; j < knots.length; j++) {
        gained |= moved(j);
      }
    }
  }

  private boolean moved(int j) {
    int from = j == 0 ? 0 : knots[j - 1] + 1;
    int to = j == knots.length - 1 ? places - 1 : knots[j + 1] - 1;
    boolean gained = false;
    for (int place = from; place <= to; place++) {
      int[] candidate = Arrays.copyOf(knots, knots.length);
      candidate[j] = place;
      gained |= take(candidate, first);
    }
    return gained;
  }

  /** The knots with the pair among them. */
  int[] knots() {
    return knots;
  }

  /** Which of the knots begins the straight run; -1 when there was no room for one. */
  int first() {
    return first;
  }

  /** What it leaves of the squared deviations, mm². */
  double sumOfSquares() {
    return least;
  }
}
