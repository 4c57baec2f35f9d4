package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;

/**
 * Points strung on chords between some of them, far enough apart for their scatter not to count.
 */
final class PointChain {

  private final List<Point> points;
  private final List<Integer> links;
  private final double[] arcs;

  private PointChain(List<Point> points, List<Integer> links) {
    this.points = points;
    this.links = links;
    this.arcs = new double[points.size()];
    for (int k = 1; k < links.size(); k++) {
      string(links.get(k - 1), links.get(k));
    }
  }

  /** First and last point are always links. */
  static PointChain through(List<Point> points, double spacingMm) {
    var links = new ArrayList<Integer>(List.of(0));
    int last = points.size() - 1;
    for (int i = 1; i < last; i++) {
      var from = points.get(links.get(links.size() - 1));
      if (from.distanceMm(points.get(i)) >= spacingMm
          && points.get(i).distanceMm(points.get(last)) >= spacingMm) {
        links.add(i);
      }
    }
    links.add(last);
    return new PointChain(points, links);
  }

  private void string(int from, int to) {
    var a = points.get(from);
    var b = points.get(to);
    double chord = a.distanceMm(b);
    for (int i = from + 1; i <= to; i++) {
      var p = points.get(i);
      double along =
          ((p.xMm() - a.xMm()) * (b.xMm() - a.xMm()) + (p.yMm() - a.yMm()) * (b.yMm() - a.yMm()))
              / chord;
      arcs[i] = arcs[from] + Math.max(0, Math.min(chord, along));
    }
  }

  /** Along the chords, mm. */
  double[] arcs() {
    return arcs;
  }

  double lengthMm() {
    return arcs[arcs.length - 1];
  }

  /**
   * The curve whose direction follows the chords best; penalty rows hold its curvature together.
   */
  SpiralCurve curve(KnotGrid grid, double[][] hats, double[][] penalty) {
    int chords = links.size() - 1;
    var rows = new double[chords + penalty.length][1 + hats.length];
    var directions = new double[rows.length];
    for (int k = 0; k < chords; k++) {
      double chord = points.get(links.get(k)).headingTo(points.get(links.get(k + 1)));
      double before = k == 0 ? chord : directions[k - 1];
      directions[k] = before + Math.IEEEremainder(chord - before, 2 * Math.PI);
      rows[k] = turns(grid, hats, (arcs[links.get(k)] + arcs[links.get(k + 1)]) / 2);
    }
    for (int i = 0; i < penalty.length; i++) {
      for (int j = 0; j < hats.length; j++) {
        rows[chords + i][j + 1] = penalty[i][j] / grid.lengthMm();
      }
    }
    double[] x = new LeastSquares(rows, directions).solution();
    var curvature = new double[grid.places()];
    for (int j = 0; j < hats.length; j++) {
      for (int place = 0; place < curvature.length; place++) {
        curvature[place] += x[j + 1] * hats[j][place];
      }
    }
    return new SpiralCurve(grid, points.get(0), x[0], curvature);
  }

  private static double[] turns(KnotGrid grid, double[][] hats, double arc) {
    var row = new double[1 + hats.length];
    row[0] = 1;
    for (int j = 0; j < hats.length; j++) {
      row[j + 1] = grid.integral(hats[j], arc);
    }
    return row;
  }
}
