package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import java.util.stream.Stream;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * FM-DEV against the differential equation it solves, dr0/ds = ±(r/r0)^m, integrated step by step
 * by a general-purpose integrator (Hipparchus, Dormand-Prince 8(5,3)) that shares no code with it.
 */
class NumericalIntegrationTest {

  private record Case(int side, double tangentRadius, Sheet sheet, double theta, double flat) {}

  /** Fixed seed: 300 sections over the whole range of angles, radii and anisotropy. */
  static Stream<Case> cases() {
    var random = new Random(1943);
    return Stream.generate(
            () ->
                new Case(
                    random.nextBoolean() ? 1 : -1,
                    Math.exp(random.nextDouble(Math.log(30), Math.log(20_000))),
                    new Sheet(
                        random.nextDouble(0.4, 3),
                        random.nextDouble(0, 12),
                        random.nextDouble(0.3, 0.5),
                        random.nextDouble(0.1, 5)),
                    Math.toRadians(random.nextDouble(1, 164)),
                    random.nextDouble(0, 60)))
        .filter(c -> development(c) != null && wellInside(development(c)))
        .limit(300);
  }

  /** Towards the centre the strain has no bound and no integrator keeps its accuracy. */
  private static boolean wellInside(EdgeDevelopment edge) {
    return Math.abs(edge.strain()) < 1.5;
  }

  private static EdgeDevelopment development(Case c) {
    double rho = c.sheet.neutralRadiusMm();
    double m = c.sheet.widthShare();
    return EdgeDevelopment.of(c.side, c.tangentRadius, rho, c.theta, c.flat, m);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_development_agrees_with_step_by_step_integration(Case c) {
    var edge = development(c);
    double rho = c.sheet.neutralRadiusMm();
    double allowance = rho * c.theta;
    double afterBend =
        integrate(c, c.tangentRadius, allowance, s -> c.tangentRadius + c.side * rho * sin(s, rho));
    double bendEnd = c.tangentRadius + c.side * rho * Math.sin(c.theta);
    double slope = c.side * Math.cos(c.theta);
    double blank = integrate(c, afterBend, c.flat, u -> bendEnd + slope * u);
    // The integrator keeps 1e-10 a step; relative 1e-9 = 1e-7 % leaves it a few steps' sum.
    assertThat(edge.blankRadiusMm()).isCloseTo(blank, withinPercentage(1e-7));
    double formed = bendEnd + slope * c.flat;
    assertThat(edge.strain())
        .isCloseTo(Math.log(formed / blank), org.assertj.core.api.Assertions.within(2e-9));
  }

  private static double sin(double s, double rho) {
    return Math.sin(s / rho);
  }

  private static double integrate(
      Case c, double start, double length, java.util.function.DoubleUnaryOperator formed) {
    if (length == 0) {
      return start;
    }
    double m = c.sheet.widthShare();
    var equation =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 1;
          }

          @Override
          public double[] computeDerivatives(double s, double[] blank) {
            return new double[] {c.side * Math.pow(formed.applyAsDouble(s) / blank[0], m)};
          }
        };
    var integrator = new DormandPrince853Integrator(1e-9, length, 1e-10, 1e-10);
    return integrator.integrate(equation, new ODEState(0, new double[] {start}), length)
        .getPrimaryState()[0];
  }
}
