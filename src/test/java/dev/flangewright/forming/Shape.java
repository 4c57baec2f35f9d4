package dev.flangewright.forming;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Hull contours of the class R = 250 to 800 mm whose curvature is known in closed form. */
enum Shape {
  CIRCLE(0, 1.2, u -> 1.0 / 500) {
    @Override
    List<Point> points(double[] at) {
      return Loft.circle(500, at);
    }
  },
  ELLIPSE_VERTEX(-0.8, 0.8, u -> ellipseCurvature(600, 420, u)) {
    @Override
    List<Point> points(double[] at) {
      return Loft.ellipse(600, 420, at);
    }
  },
  ELLIPSE_QUARTER(0.05, 1.55, u -> ellipseCurvature(600, 420, u)) {
    @Override
    List<Point> points(double[] at) {
      return Loft.ellipse(600, 420, at);
    }
  },
  CLOTHOID(0, 700, s -> 1.0 / 800 + (1.0 / 300 - 1.0 / 800) * s / 700) {
    @Override
    List<Point> points(double[] at) {
      return Loft.withCurvature(at, this::curvaturePerMm);
    }
  },
  SUPERELLIPSE(0.08, Math.PI / 2 - 0.08, u -> superellipseCurvature(500, 2.6, u)) {
    @Override
    List<Point> points(double[] at) {
      return Loft.curve(at, u -> superellipse(500, 2.6, u));
    }
  };

  private final double from;
  private final double to;
  private final DoubleUnaryOperator curvature;

  Shape(double from, double to, DoubleUnaryOperator curvature) {
    this.from = from;
    this.to = to;
    this.curvature = curvature;
  }

  abstract List<Point> points(double[] at);

  double curvaturePerMm(double parameter) {
    return curvature.applyAsDouble(parameter);
  }

  double[] even(int count) {
    return Loft.even(from, to, count);
  }

  /** Steps that differ by up to three to one, at random. */
  double[] uneven(int count, Random random) {
    double[] steps =
        DoubleStream.generate(() -> random.nextDouble(0.5, 1.5)).limit(count - 1L).toArray();
    double sum = DoubleStream.of(steps).sum();
    double[] at = new double[count];
    at[0] = from;
    for (int i = 1; i < count; i++) {
      at[i] = Math.min(to, at[i - 1] + (to - from) * steps[i - 1] / sum);
    }
    return at;
  }

  /** Digitised points as stations; unlike a loft's they need not make a contour as they are. */
  static List<Station> read(List<Point> points) {
    return IntStream.range(0, points.size())
        .mapToObj(i -> new Station(i + 1, points.get(i).xMm(), points.get(i).yMm(), 90, 20))
        .toList();
  }

  static List<Point> scattered(List<Point> points, Random random, double errorMm) {
    return points.stream()
        .map(
            p ->
                new Point(
                    p.xMm() + random.nextDouble(-errorMm, errorMm),
                    p.yMm() + random.nextDouble(-errorMm, errorMm)))
        .toList();
  }

  static List<Point> scatteredNormally(List<Point> points, Random random, double deviationMm) {
    return points.stream()
        .map(
            p ->
                new Point(
                    p.xMm() + deviationMm * random.nextGaussian(),
                    p.yMm() + deviationMm * random.nextGaussian()))
        .toList();
  }

  private static double ellipseCurvature(double a, double b, double u) {
    return a * b / Math.pow(Math.hypot(a * Math.sin(u), b * Math.cos(u)), 3);
  }

  private static Point superellipse(double a, double n, double u) {
    return new Point(a * Math.pow(Math.cos(u), 2 / n), a * Math.pow(Math.sin(u), 2 / n));
  }

  /** From |x|^n + |y|^n = a^n: κ = (Fxx·Fy² + Fyy·Fx²)/(Fx² + Fy²)^(3/2). */
  private static double superellipseCurvature(double a, double n, double u) {
    var p = superellipse(a, n, u);
    double fx = n * Math.pow(p.xMm(), n - 1);
    double fy = n * Math.pow(p.yMm(), n - 1);
    double fxx = n * (n - 1) * Math.pow(p.xMm(), n - 2);
    double fyy = n * (n - 1) * Math.pow(p.yMm(), n - 2);
    return (fxx * fy * fy + fyy * fx * fx) / Math.pow(Math.hypot(fx, fy), 3);
  }
}
