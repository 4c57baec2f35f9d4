package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * FM-DEV against the differential equation it solves, integrated {@link StepByStep} by a
 * general-purpose integrator that shares no code with it.
 */
class NumericalIntegrationTest {

  /** Fixed seed: 300 sections over the whole range of angles, radii and anisotropy. */
  static Stream<StepByStep> sections() {
    var random = new Random(1943);
    return Stream.generate(
            () ->
                new StepByStep(
                    random.nextBoolean() ? 1 : -1,
                    Math.exp(random.nextDouble(Math.log(30), Math.log(20_000))),
                    new Sheet(
                        random.nextDouble(0.4, 3),
                        random.nextDouble(0, 12),
                        random.nextDouble(0.3, 0.5),
                        random.nextDouble(0.1, 5)),
                    Math.toRadians(random.nextDouble(1, 164)),
                    random.nextDouble(0, 60)))
        .filter(NumericalIntegrationTest::wellInside)
        .limit(300);
  }

  /** Towards the centre the strain has no bound and no integrator keeps its accuracy. */
  private static boolean wellInside(StepByStep section) {
    var edge = section.inClosedForm();
    return edge != null && Math.abs(edge.strain()) < 1.5;
  }

  @ParameterizedTest
  @MethodSource("sections")
  void the_development_agrees_with_step_by_step_integration(StepByStep section) {
    var edge = section.inClosedForm();
    // The integrator keeps 1e-10 a step; relative 1e-9 = 1e-7 % leaves it a few steps' sum.
    assertThat(edge.blankRadiusMm()).isCloseTo(section.blankRadiusMm(), withinPercentage(1e-7));
    assertThat(edge.strain()).isCloseTo(section.edgeStrain(), within(2e-9));
  }
}
