package dev.flangewright.forming;

import java.util.Arrays;

/**
 * A curve given by its start, its direction there and a curvature that is linear between the places
 * of a {@link KnotGrid} and constant beyond its ends.
 *
 * <p>The direction is the exact integral of the curvature; the position is summed over steps of at
 * most 2 mm, each the chord of its arc, {@code h·(1 − (κh)²/24)} at the mean direction: exact to
 * the fifth order of h, 1e-9 mm a step at a radius of 100 mm. Derived.
 */
final class SpiralCurve {

  private final KnotGrid grid;
  private final double[] curvature;
  private final double[] headings;
  private final Point[] nodes;

  /**
   * @param curvature at the grid's places, 1/mm
   */
  SpiralCurve(KnotGrid grid, Point start, double heading, double[] curvature) {
    this.grid = grid;
    this.curvature = curvature;
    this.headings = new double[grid.nodes()];
    this.nodes = new Point[grid.nodes()];
    headings[0] = heading;
    nodes[0] = start;
    for (int k = 1; k < nodes.length; k++) {
      double arc = k * grid.nodeMm();
      headings[k] = headingFrom(k - 1, arc);
      nodes[k] = pointFrom(k - 1, arc);
    }
  }

  KnotGrid grid() {
    return grid;
  }

  /** At the grid's places, 1/mm. */
  double[] curvature() {
    return curvature;
  }

  Point start() {
    return nodes[0];
  }

  double startHeading() {
    return headings[0];
  }

  double curvaturePerMm(double arc) {
    return grid.between(curvature, arc);
  }

  double heading(double arc) {
    return headingFrom(node(arc), arc);
  }

  Point at(double arc) {
    return pointFrom(node(arc), arc);
  }

  /** Distance of a point from the curve at an arc position, positive to the left, mm. */
  double deviation(Point point, double arc) {
    var foot = at(arc);
    double heading = heading(arc);
    return (point.yMm() - foot.yMm()) * Math.cos(heading)
        - (point.xMm() - foot.xMm()) * Math.sin(heading);
  }

  /** The arc position of a point's perpendicular, found from a guess near it, mm. */
  double foot(Point point, double guess) {
    double arc = guess;
    for (int i = 0; i < 4; i++) {
      var here = at(arc);
      double heading = heading(arc);
      arc +=
          (point.xMm() - here.xMm()) * Math.cos(heading)
              + (point.yMm() - here.yMm()) * Math.sin(heading);
      arc = Math.max(-grid.lengthMm(), Math.min(2 * grid.lengthMm(), arc));
    }
    return arc;
  }

  private int node(double arc) {
    return (int) Math.max(0, Math.min(nodes.length - 2, arc / grid.nodeMm()));
  }

  private double headingFrom(int node, double arc) {
    double h = arc - node * grid.nodeMm();
    double from = curvaturePerMm(node * grid.nodeMm());
    return headings[node] + h * (from + curvaturePerMm(arc)) / 2;
  }

  private Point pointFrom(int node, double arc) {
    double h = arc - node * grid.nodeMm();
    double from = curvaturePerMm(node * grid.nodeMm());
    double to = curvaturePerMm(arc);
    double chord = h * (1 - Math.pow((from + to) / 2 * h, 2) / 24);
    double direction = headings[node] + h * (2 * from + to) / 6;
    return new Point(
        nodes[node].xMm() + chord * Math.cos(direction),
        nodes[node].yMm() + chord * Math.sin(direction));
  }

  /**
   * How the curve moves to the left at the given arc positions when it is shifted to the left at
   * its start (first column), turned there (second), or more curved at one of the places (the
   * rest), mm per unit.
   */
  double[][] sensitivity(double[] arcs) {
    var bendings = new Bending[grid.places()];
    Arrays.setAll(bendings, place -> new Bending(grid, nodes, place));
    var rows = new double[arcs.length][bendings.length + 2];
    for (int i = 0; i < arcs.length; i++) {
      double heading = heading(arcs[i]);
      double cos = Math.cos(heading);
      double sin = Math.sin(heading);
      var foot = at(arcs[i]);
      int node = node(arcs[i]);
      double share = arcs[i] / grid.nodeMm() - node;
      rows[i][0] = Math.cos(heading - startHeading());
      rows[i][1] = (foot.xMm() - start().xMm()) * cos + (foot.yMm() - start().yMm()) * sin;
      for (int place = 0; place < bendings.length; place++) {
        rows[i][place + 2] = bendings[place].toTheLeft(node, share, cos, sin);
      }
    }
    return rows;
  }
}
