package dev.flangewright.forming;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.jspecify.annotations.Nullable;

/**
 * The development of a curved flange by a general-purpose integrator (Hipparchus, Dormand-Prince
 * 8(5,3), 1e-10 a step): the differential equation dr0/ds = ±(r/r0)^m walked from the tangent line
 * to the edge.
 *
 * @param side +1 convex, −1 concave
 * @param tangentRadius Rb, mm
 * @param theta bend angle, rad
 * @param flat length of the flat part of the flange, mm
 */
record StepByStep(int side, double tangentRadius, Sheet sheet, double theta, double flat) {

  private static final double TOLERANCE = 1e-10;

  /** What it is held against; null when the section cannot be made. */
  @Nullable EdgeDevelopment inClosedForm() {
    return EdgeDevelopment.of(
        side, tangentRadius, sheet.neutralRadiusMm(), theta, flat, sheet.widthShare());
  }

  /** r0 at the edge, mm. */
  double blankRadiusMm() {
    double rho = sheet.neutralRadiusMm();
    double afterBend =
        walk(tangentRadius, rho * theta, s -> tangentRadius + side * rho * Math.sin(s / rho));
    return walk(afterBend, flat, u -> bendEndMm() + slope() * u);
  }

  /** r at the edge, mm. */
  double formedRadiusMm() {
    return bendEndMm() + slope() * flat;
  }

  double edgeStrain() {
    return Math.log(formedRadiusMm() / blankRadiusMm());
  }

  private double bendEndMm() {
    return tangentRadius + side * sheet.neutralRadiusMm() * Math.sin(theta);
  }

  private double slope() {
    return side * Math.cos(theta);
  }

  private double walk(double start, double length, DoubleUnaryOperator formed) {
    if (length == 0) {
      return start;
    }
    double m = sheet.widthShare();
    var equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 1;
          }

          @Override
          public double[] computeDerivatives(double s, double[] blank) {
            return new double[] {side * Math.pow(formed.applyAsDouble(s) / blank[0], m)};
          }
        };
    return new DormandPrince853Integrator(1e-9, length, TOLERANCE, TOLERANCE)
        .integrate(equation, new ODEState(0, new double[] {start}), length)
        .getPrimaryState()[0];
  }
}
