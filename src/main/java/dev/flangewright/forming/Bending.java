package dev.flangewright.forming;

/**
 * How the nodes of a {@link SpiralCurve} move when it is more curved by one unit at one place of
 * its grid, falling to nothing at the neighbouring places: not at all before them, and behind them
 * as one piece, turned about the end of the bend. Mm per 1/mm.
 */
final class Bending {

  private final Point[] nodes;
  private final int from;
  private final double[] x;
  private final double[] y;
  private double turn;

  Bending(KnotGrid grid, Point[] nodes, int place) {
    this.nodes = nodes;
    this.from = Math.max(0, place - 1) * grid.steps();
    int to = Math.min(grid.cells(), place + 1) * grid.steps();
    this.x = new double[to - from + 1];
    this.y = new double[to - from + 1];
    double h = grid.nodeMm();
    double before = hat(grid, place, from);
    for (int k = 1; k < x.length; k++) {
      double after = hat(grid, place, from + k);
      double mean = turn + h * (3 * before + after) / 8;
      turn += h * (before + after) / 2;
      before = after;
      var start = nodes[from + k - 1];
      var end = nodes[from + k];
      x[k] = x[k - 1] - mean * (end.yMm() - start.yMm());
      y[k] = y[k - 1] + mean * (end.xMm() - start.xMm());
    }
  }

  private static double hat(KnotGrid grid, int place, int node) {
    return 1 - Math.abs((double) node / grid.steps() - place);
  }

  /** To the left of a heading, a share of the way from a node to the next. */
  double toTheLeft(int node, double share, double cosHeading, double sinHeading) {
    if (node + 1 <= from) {
      return 0;
    }
    double moveX = xAt(node) + (xAt(node + 1) - xAt(node)) * share;
    double moveY = yAt(node) + (yAt(node + 1) - yAt(node)) * share;
    return moveY * cosHeading - moveX * sinHeading;
  }

  private double xAt(int node) {
    int k = Math.max(0, Math.min(x.length - 1, node - from));
    return x[k] - turned(node) * (nodes[node].yMm() - nodes[from + k].yMm());
  }

  private double yAt(int node) {
    int k = Math.max(0, Math.min(y.length - 1, node - from));
    return y[k] + turned(node) * (nodes[node].xMm() - nodes[from + k].xMm());
  }

  private double turned(int node) {
    return node < from ? 0 : turn;
  }
}
