package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Where the knots of a fair fit serve best.
 *
 * <p>FM-FIT, the knots: beside a curve near the points the deviations of any fair fit are a linear
 * function of its curvatures, so that a set of knots is judged by one small linear least squares
 * problem. The straight line comes first, then the circle, then a knot at either end; every further
 * knot is set where it lowers the sum of squares most, after which the knot whose move lowers the
 * sum most is moved while that is by more than 4 parts in n + 4, n the number of stations. Knots
 * stay 1/16 of the length apart and inner ones 1/6 of it from the ends, where few stations would
 * have to bear them. These shares are shop defaults, no source; they keep scatter from pulling
 * knots about.
 */
final class KnotSearch {

  private static final int APART = 16;
  private static final int END_SHARE = 6;
  private static final double MOVE = 4;
  private static final int MOVES = 24;
  private static final int NONE = -1;

  private final KnotGrid grid;
  private final double[][] columns;
  private final double[] target;
  private final double beyond;
  private final double gain;

  /** Shift and turn of the start are projected out, so that only the places' columns are left. */
  KnotSearch(SpiralFit near) {
    this.grid = near.curve().grid();
    var full = near.curve().sensitivity(near.feet());
    var reduced = new LeastSquares(full, near.target(full));
    int rows = grid.places() + 2;
    this.columns = new double[grid.places()][rows - 2];
    for (int place = 0; place < columns.length; place++) {
      for (int i = 2; i < rows; i++) {
        columns[place][i - 2] = reduced.triangle(i, place + 2);
      }
    }
    this.target = Arrays.copyOfRange(reduced.turned(), 2, rows);
    this.beyond = square(Arrays.copyOfRange(reduced.turned(), rows, reduced.turned().length));
    this.gain = full.length / (full.length + MOVE);
  }

  /** The next larger set of knots; the same one when there is no room for another. */
  int[] grown(int[] knots) {
    return switch (knots.length) {
      case 0 -> new int[] {grid.cells() / 2};
      case 1 -> moved(new int[] {0, grid.cells()});
      default -> moved(inserted(knots));
    };
  }

  private int[] inserted(int[] knots) {
    int[] best = knots;
    double least = Double.POSITIVE_INFINITY;
    for (int place = 0; place < grid.places(); place++) {
      int[] candidate = with(knots, place);
      double sum = apart(candidate) ? sumOfSquares(candidate) : Double.POSITIVE_INFINITY;
      if (sum < least) {
        least = sum;
        best = candidate;
      }
    }
    return best;
  }

  private int[] moved(int[] knots) {
    int[] best = knots;
    for (int move = 0; move < MOVES; move++) {
      int[] next = movedOnce(best);
      if (!(sumOfSquares(next) < gain * sumOfSquares(best))) {
        return best;
      }
      best = next;
    }
    return best;
  }

  /** Of all moves of one knot the best, whichever knot comes first: both hands of a part agree. */
  private int[] movedOnce(int[] knots) {
    int[] best = knots;
    double least = Double.POSITIVE_INFINITY;
    for (int j = 0; j < knots.length; j++) {
      int[] candidate = inserted(without(knots, j));
      double sum = sumOfSquares(candidate);
      if (sum < least) {
        least = sum;
        best = candidate;
      }
    }
    return best;
  }

  private static int[] with(int[] knots, int place) {
    int[] more = Arrays.copyOf(knots, knots.length + 1);
    more[knots.length] = place;
    Arrays.sort(more);
    return more;
  }

  private static int[] without(int[] knots, int j) {
    var rest = new ArrayList<Integer>();
    for (int i = 0; i < knots.length; i++) {
      if (i != j) {
        rest.add(knots[i]);
      }
    }
    return rest.stream().mapToInt(Integer::intValue).toArray();
  }

  private boolean apart(int[] knots) {
    int last = knots.length - 1;
    for (int i = 1; i <= last; i++) {
      if (knots[i] - knots[i - 1] < grid.cells() / APART) {
        return false;
      }
    }
    int end = grid.cells() / END_SHARE;
    return last < 1 || knots[1] >= end && knots[last - 1] <= grid.cells() - end;
  }

  /** What the best curve with these knots leaves of the squared deviations, mm², nearly. */
  double sumOfSquares(int[] knots) {
    return apart(knots) || knots.length < 2 ? left(knots, NONE) : Double.POSITIVE_INFINITY;
  }

  /**
   * The same with a straight run from one knot to the next; infinite when they stand too close.
   *
   * @param straight which of the knots begins it
   */
  double sumOfSquares(int[] knots, int straight) {
    return apart(knots) ? left(knots, straight) : Double.POSITIVE_INFINITY;
  }

  /** A straight run between the knots, unless none serves better by more than scatter would. */
  @Nullable StraightRun straightRun(int[] knots) {
    if (knots.length < 2) {
      return null;
    }
    var run = StraightRun.between(this, grid.places(), knots);
    return gain * run.sumOfSquares() < sumOfSquares(knots) ? run : null;
  }

  private double left(int[] knots, int straight) {
    double[] rest = target.clone();
    var directions = new ArrayList<double[]>();
    for (int j = 0; j < knots.length; j++) {
      if (straight != NONE && (j == straight || j == straight + 1)) {
        continue;
      }
      double[] direction = column(grid.hat(knots, j));
      double before = square(direction);
      directions.forEach(other -> takeOut(direction, other));
      if (square(direction) > 1e-18 * before) {
        takeOut(rest, direction);
        directions.add(direction);
      }
    }
    return square(rest) + beyond;
  }

  /** The places' columns are a triangle: nothing stands below the diagonal. */
  private double[] column(double[] hat) {
    var column = new double[target.length];
    for (int place = 0; place < hat.length; place++) {
      if (hat[place] != 0) {
        for (int i = 0; i <= place; i++) {
          column[i] += hat[place] * columns[place][i];
        }
      }
    }
    return column;
  }

  private static void takeOut(double[] from, double[] direction) {
    double share = product(from, direction) / square(direction);
    for (int i = 0; i < from.length; i++) {
      from[i] -= share * direction[i];
    }
  }

  private static double square(double[] a) {
    return product(a, a);
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
