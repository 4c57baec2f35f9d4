package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bend's share of FM-DEV against a general-purpose integrator (Hipparchus, Romberg). */
class BendIntegralTest {

  @ParameterizedTest
  @ValueSource(doubles = {-0.8, -0.201, -0.2, -0.05, -1e-6, 0, 1e-6, 0.007, 0.05, 0.2, 0.201, 2})
  void wide_and_tight_contours_are_integrated_alike(double c) {
    for (double degrees : new double[] {0.5, 30, 90, 135, 164}) {
      for (double m : new double[] {0.1, 0.5, 0.83}) {
        double theta = Math.toRadians(degrees);
        double whole =
            new RombergIntegrator(1e-13, 1e-13, 4, 25)
                .integrate(1_000_000, u -> Math.pow(1 + c * Math.sin(u), m), 0, theta);
        assertThat(BendIntegral.of(c, theta, m)).isCloseTo(whole, withinPercentage(1e-9));
      }
    }
  }
}
