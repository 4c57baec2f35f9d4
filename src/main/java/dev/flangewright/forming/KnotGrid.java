package dev.flangewright.forming;

/**
 * The places along a piece of contour at which the curvature of a fit may have a knot: evenly
 * spaced, both ends included, so that a piece seen in a mirror has the same ones.
 *
 * @param lengthMm of the piece
 * @param cells spaces between places, so there are {@code cells + 1} places
 * @param steps of integration in each cell
 */
record KnotGrid(double lengthMm, int cells, int steps) {

  private static final int FEW = 32;
  private static final int MANY = 64;
  private static final double STEP_MM = 2;
  private static final int MOST_STEPS = 40;

  /** 33 places, or 65 for a hundred stations and more; steps of at most 2 mm where that is few. */
  static KnotGrid of(double lengthMm, int stations) {
    int cells = stations < 100 ? FEW : MANY;
    double steps = Math.ceil(lengthMm / cells / STEP_MM);
    return new KnotGrid(lengthMm, cells, (int) Math.min(MOST_STEPS, Math.max(1, steps)));
  }

  int places() {
    return cells + 1;
  }

  int nodes() {
    return cells * steps + 1;
  }

  double nodeMm() {
    return lengthMm / (cells * steps);
  }

  /** A function given at the places, linear between them and constant beyond the ends. */
  double between(double[] atPlaces, double arc) {
    double x = Math.max(0, Math.min(cells, arc / lengthMm * cells));
    int left = (int) Math.min(cells - 1, x);
    return atPlaces[left] + (atPlaces[left + 1] - atPlaces[left]) * (x - left);
  }

  /** The integral of such a function from 0 to an arc position between the ends. */
  double integral(double[] atPlaces, double arc) {
    double cell = lengthMm / cells;
    double sum = 0;
    for (int i = 0; i < cells && i * cell < arc; i++) {
      double to = Math.min(arc, (i + 1) * cell);
      sum += (to - i * cell) * (atPlaces[i] + between(atPlaces, to)) / 2;
    }
    return sum;
  }

  /** Evenly spread knots, both ends included. */
  int[] spread(int count) {
    var knots = new int[count];
    for (int i = 0; i < count; i++) {
      knots[i] = (int) Math.round((double) cells * i / (count - 1));
    }
    return knots;
  }

  /** 1 at the j-th knot, falling to 0 at its neighbours, constant beyond the outer knots. */
  double[] hat(int[] knots, int j) {
    var hat = new double[places()];
    for (int place = 0; place < hat.length; place++) {
      if (place <= knots[j]) {
        hat[place] = j == 0 ? 1 : rise(knots[j - 1], knots[j], place);
      } else {
        hat[place] = j == knots.length - 1 ? 1 : rise(knots[j + 1], knots[j], place);
      }
    }
    return hat;
  }

  private static double rise(int from, int to, int place) {
    return Math.max(0, (double) (place - from) / (to - from));
  }
}
