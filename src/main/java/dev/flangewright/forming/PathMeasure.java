package dev.flangewright.forming;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Arc length along one part of a path, by five-point Gauss quadrature over 64 spans of t. */
final class PathMeasure {

  private static final int SPANS = 64;
  private static final GaussIntegrator UNIT = new GaussIntegratorFactory().legendre(5, 0, 1);

  private final PathPart part;
  private final double[] lengths = new double[SPANS + 1];

  PathMeasure(PathPart part) {
    this.part = part;
    for (int i = 0; i < SPANS; i++) {
      lengths[i + 1] = lengths[i] + length((double) i / SPANS, (i + 1.0) / SPANS);
    }
  }

  private double length(double from, double to) {
    double span = to - from;
    return span * UNIT.integrate(u -> speed(from + span * u));
  }

  private double speed(double t) {
    var slope = part.slope(t);
    return Math.hypot(slope.xMm(), slope.yMm());
  }

  double lengthMm() {
    return lengths[SPANS];
  }

  /** The point a length from the start, by Newton's rule within its span. */
  Point at(double lengthMm) {
    int span = 0;
    while (span < SPANS - 1 && lengths[span + 1] < lengthMm) {
      span++;
    }
    double from = (double) span / SPANS;
    double to = (span + 1.0) / SPANS;
    double t = from + (to - from) * share(span, lengthMm);
    for (int i = 0; i < 4 && speed(t) > 0; i++) {
      double miss = lengths[span] + length(from, t) - lengthMm;
      t = Math.max(from, Math.min(to, t - miss / speed(t)));
    }
    return part.at(t);
  }

  private double share(int span, double lengthMm) {
    double length = lengths[span + 1] - lengths[span];
    return length == 0 ? 0 : (lengthMm - lengths[span]) / length;
  }

  /** Direction a little after the start or before the end, where a control point may coincide. */
  double heading(double t) {
    var slope = part.slope(t);
    if (slope.xMm() == 0 && slope.yMm() == 0) {
      slope = part.slope(t < 0.5 ? t + 1e-6 : t - 1e-6);
    }
    return Math.atan2(slope.yMm(), slope.xMm());
  }
}
