package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Contours with a known curvature, as a loft would give them. Web to the left of travel. */
final class Loft {

  static final double ANGLE_DEG = 90;
  static final double WIDTH_MM = 20;

  private Loft() {}

  static Contour through(List<Point> points) {
    return through(points, ANGLE_DEG, WIDTH_MM);
  }

  static Contour through(List<Point> points, double bendAngleDeg, double widthMm) {
    return Contour.of(
        IntStream.range(0, points.size())
            .mapToObj(
                i -> {
                  var p = points.get(i);
                  return new Station(i + 1, p.xMm(), p.yMm(), bendAngleDeg, widthMm);
                })
            .toList());
  }

  /** Evenly spaced parameters, both ends included. */
  static double[] even(double from, double to, int count) {
    return IntStream.range(0, count)
        .mapToDouble(i -> from + (to - from) * i / (count - 1))
        .toArray();
  }

  /** Parameters whose spacing changes by up to three to one from one to the next. */
  static double[] uneven(double from, double to, int count) {
    double[] steps = IntStream.range(1, count).mapToDouble(i -> i % 3 == 0 ? 1.5 : 0.5).toArray();
    double sum = DoubleStream.of(steps).sum();
    double[] at = new double[count];
    at[0] = from;
    for (int i = 1; i < count; i++) {
      at[i] = at[i - 1] + (to - from) * steps[i - 1] / sum;
    }
    return at;
  }

  static List<Point> curve(double[] parameters, DoubleFunction<Point> at) {
    return DoubleStream.of(parameters).mapToObj(at).toList();
  }

  /** Counter-clockwise about the origin: a shrink. */
  static List<Point> circle(double radius, double[] angles) {
    return curve(angles, a -> new Point(radius * Math.cos(a), radius * Math.sin(a)));
  }

  static List<Point> ellipse(double a, double b, double[] parameters) {
    return curve(parameters, u -> new Point(a * Math.cos(u), b * Math.sin(u)));
  }

  /**
   * The curve whose curvature is the given function of arc length, from the origin along x, by
   * midpoint steps of about 0.05 mm (position error κ²h²/24 of the length: below 3e-6 mm over a
   * metre of 200 mm radius).
   */
  static List<Point> withCurvature(double[] arcs, DoubleUnaryOperator curvature) {
    var points = new ArrayList<Point>();
    double x = 0;
    double y = 0;
    double heading = 0;
    double s = 0;
    for (double arc : arcs) {
      int steps = (int) Math.ceil((arc - s) / 0.05);
      double h = steps == 0 ? 0 : (arc - s) / steps;
      for (int i = 0; i < steps; i++) {
        double middle = heading + curvature.applyAsDouble(s + h / 4) * h / 2;
        x += h * Math.cos(middle);
        y += h * Math.sin(middle);
        heading += curvature.applyAsDouble(s + h / 2) * h;
        s += h;
      }
      points.add(new Point(x, y));
    }
    return points;
  }

  /** The same line seen in a mirror, travelled the other way so that the web stays to the left. */
  static List<Point> mirrored(List<Point> points) {
    var mirrored = new ArrayList<>(points.stream().map(p -> new Point(-p.xMm(), p.yMm())).toList());
    Collections.reverse(mirrored);
    return mirrored;
  }

  /** The same line travelled the other way: the web on its other side. */
  static List<Point> reversed(List<Point> points) {
    var reversed = new ArrayList<>(points);
    Collections.reverse(reversed);
    return reversed;
  }

  /** Coordinates as a table with the given step prints them, mm. */
  static List<Point> rounded(List<Point> points, double step) {
    return points.stream()
        .map(p -> new Point(Math.rint(p.xMm() / step) * step, Math.rint(p.yMm() / step) * step))
        .toList();
  }
}
