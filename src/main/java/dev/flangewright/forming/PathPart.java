package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.List;

/** One segment of a path, for t from 0 to 1. */
sealed interface PathPart {

  Point at(double t);

  /** The derivative by t, mm. */
  Point slope(double t);

  /** A Bézier curve by its control points; two make a line, three a quadratic, four a cubic. */
  record Bezier(List<Point> controls) implements PathPart {

    @Override
    public Point at(double t) {
      var points = new ArrayList<>(controls);
      for (int left = points.size() - 1; left > 0; left--) {
        for (int i = 0; i < left; i++) {
          points.set(i, points.get(i).towards(points.get(i + 1), t));
        }
      }
      return points.get(0);
    }

    @Override
    public Point slope(double t) {
      int degree = controls.size() - 1;
      var steps = new ArrayList<Point>();
      for (int i = 0; i < degree; i++) {
        var from = controls.get(i);
        var to = controls.get(i + 1);
        steps.add(new Point(degree * (to.xMm() - from.xMm()), degree * (to.yMm() - from.yMm())));
      }
      return new Bezier(steps).at(t);
    }
  }

  /**
   * An elliptical arc by its centre: radii (mm), turn of the ellipse, start angle and sweep
   * (radians).
   */
  record Arc(Point centre, double rx, double ry, double turn, double from, double sweep)
      implements PathPart {

    @Override
    public Point at(double t) {
      double angle = from + t * sweep;
      var arm = turned(rx * Math.cos(angle), ry * Math.sin(angle));
      return new Point(centre.xMm() + arm.xMm(), centre.yMm() + arm.yMm());
    }

    @Override
    public Point slope(double t) {
      double angle = from + t * sweep;
      return turned(-sweep * rx * Math.sin(angle), sweep * ry * Math.cos(angle));
    }

    private Point turned(double x, double y) {
      return new Point(
          x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn));
    }

    /**
     * From the end points and radii of the path command, which must not be zero.
     *
     * <p>Source: W3C SVG 2, appendix B.2.4, conversion from endpoint to centre parameterisation
     * (F.6.5 in SVG 1.1), and B.2.5: radii too small to reach are scaled up together.
     */
    static Arc between(
        Point start, Point end, double rx, double ry, double turn, boolean large, boolean sweep) {
      double dx = (start.xMm() - end.xMm()) / 2;
      double dy = (start.yMm() - end.yMm()) / 2;
      double x = (Math.cos(turn) * dx + Math.sin(turn) * dy) / Math.abs(rx);
      double y = (-Math.sin(turn) * dx + Math.cos(turn) * dy) / Math.abs(ry);
      double reach = Math.hypot(x, y);
      double scale = Math.max(1, reach);
      double a = Math.abs(rx) * scale;
      double b = Math.abs(ry) * scale;
      x /= scale;
      y /= scale;
      double square = x * x + y * y;
      double factor = Math.sqrt(Math.max(0, 1 - square) / square) * (large == sweep ? -1 : 1);
      double cx = factor * y;
      double cy = -factor * x;
      double from = Math.atan2(y - cy, x - cx);
      double angle = Math.atan2(-y - cy, -x - cx) - from;
      if (sweep && angle < 0) {
        angle += 2 * Math.PI;
      } else if (!sweep && angle > 0) {
        angle -= 2 * Math.PI;
      }
      var arm = new Arc(new Point(0, 0), a, b, turn, 0, 0).turned(a * cx, b * cy);
      var middle = start.halfWayTo(end);
      var centre = new Point(middle.xMm() + arm.xMm(), middle.yMm() + arm.yMm());
      return new Arc(centre, a, b, turn, from, angle);
    }
  }
}
