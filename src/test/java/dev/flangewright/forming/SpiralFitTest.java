package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The least-squares curve beside points, where it is known in closed form. */
class SpiralFitTest {

  private static final double[][] STRAIGHT = new double[0][];

  /**
   * Points 10 mm apart on the x axis, four of them off by a height in turn up, down, down and up:
   * no line fits better than the axis, since heights and heights times places add up to nothing.
   */
  private static List<Point> fourOff(int count, double height) {
    var points = new ArrayList<Point>();
    for (int i = 0; i < count; i++) {
      double sign = i == 5 || i == 23 ? 1 : i == 11 || i == 17 ? -1 : 0;
      points.add(new Point(10 * i, sign * height));
    }
    return points;
  }

  private static SpiralFit line(List<Point> points) {
    return SpiralFit.near(points, 5).best(STRAIGHT);
  }

  @Test
  void the_straight_line_through_points_is_the_one_of_least_squares() {
    var fit = line(fourOff(80, 0.4));
    assertThat(fit.sumOfSquares()).isCloseTo(4 * 0.4 * 0.4, within(1e-9));
    assertThat(fit.deviations()[5]).isCloseTo(0.4, within(1e-9));
    assertThat(fit.deviations()[11]).isCloseTo(-0.4, within(1e-9));
    assertThat(fit.deviations()[0]).isCloseTo(0, within(1e-9));
    for (int i = 0; i < 80; i++) {
      assertThat(fit.feet()[i] - fit.feet()[0]).isCloseTo(10 * i, within(1e-6));
    }
  }

  @ParameterizedTest
  @CsvSource({
    // Four of 80 are 5 % and may lie outside; four of 79 are more. None beyond 1.5 times.
    "80, 0.4, 0.41, true",
    "80, 0.4, 0.39, true",
    "79, 0.4, 0.39, false",
    "79, 0.4, 0.41, true",
    "80, 0.4, 0.268, true",
    "80, 0.4, 0.265, false",
    "400, 0.4, 0.265, false",
  })
  void a_fit_is_within_the_tolerance_by_the_rule_of_the_method(
      int count, double height, double tolerance, boolean within) {
    assertThat(line(fourOff(count, height)).within(tolerance)).isEqualTo(within);
  }

  @Test
  void exact_points_of_a_chain_of_clothoids_come_back_as_that_chain() {
    // Curvature from 1/500 up to 1/200 in the middle and down to 1/800.
    double length = 640;
    double[] at = Loft.even(0, length, 81);
    var points =
        Loft.withCurvature(
            at,
            s ->
                s < length / 2
                    ? 1.0 / 500 + (1.0 / 200 - 1.0 / 500) * s / (length / 2)
                    : 1.0 / 200 + (1.0 / 800 - 1.0 / 200) * (s - length / 2) / (length / 2));
    var near = SpiralFit.near(points, 1);
    var grid = near.curve().grid();
    int[] knots = {0, 16, 32};
    var fit = near.best(SpiralFit.hats(grid, knots));
    // The grid is laid along the first fit, whose length is off by hundredths of a millimetre.
    assertThat(grid.lengthMm()).isCloseTo(length, within(0.05));
    assertThat(Math.sqrt(fit.sumOfSquares() / 81)).isLessThan(2e-3);
    assertThat(fit.curve().curvature()[0]).isCloseTo(1.0 / 500, within(1e-6));
    assertThat(fit.curve().curvature()[16]).isCloseTo(1.0 / 200, within(1e-6));
    assertThat(fit.curve().curvature()[32]).isCloseTo(1.0 / 800, within(1e-6));
  }

  @Test
  void a_curve_near_the_points_stays_near_them_from_the_first_to_the_last() {
    for (var shape : Shape.values()) {
      var points = shape.points(shape.even(40));
      var near = SpiralFit.near(points, 7);
      assertThat(near.feet()[0]).isCloseTo(0, within(1e-3));
      assertThat(near.feet()[39]).isCloseTo(near.curve().grid().lengthMm(), within(1e-3));
      assertThat(near.deviations()).containsOnly(new double[] {0}, within(0.05));
      assertThat(near.points()).isEqualTo(points);
      for (int i = 5; i < 35; i++) {
        // Smooth as it is, it keeps the curvature to a few per cent.
        double truth = shape.curvaturePerMm(shape.even(40)[i]);
        assertThat(near.curve().curvaturePerMm(near.feet()[i]))
            .isCloseTo(truth, within(0.05 * truth));
      }
    }
  }

  @Test
  void near_a_zigzag_the_curve_goes_through_the_middle() {
    // Scatter of 1 mm on a spacing of 20 mm, by turns up and down, must not be followed: a curve
    // of two spaces of the grid that did would have a curvature of 1/50 and more.
    var points = new ArrayList<Point>();
    for (int i = 0; i < 41; i++) {
      points.add(new Point(20 * i, i % 2 == 0 ? 0.5 : -0.5));
    }
    var near = SpiralFit.near(points, 12);
    assertThat(near.curve().curvature()).containsOnly(new double[] {0}, within(1.0 / 1000));
  }

  @Test
  void the_target_is_what_is_left_plus_what_the_curvature_has_done() {
    var points = Loft.circle(400, Loft.even(0, 1, 30));
    var fit = SpiralFit.near(points, 1).best(SpiralFit.hats(KnotGrid.of(400, 30), new int[] {16}));
    var full = fit.curve().sensitivity(fit.feet());
    double[] target = fit.target(full);
    for (int i = 0; i < 30; i++) {
      // A curvature of 1/400 all along moves the place s by the sum of its sensitivities.
      double done = Arrays.stream(full[i]).skip(2).sum() / 400;
      assertThat(target[i]).isCloseTo(done, within(1e-6));
      double[] reduced =
          SpiralFit.reduced(full[i], SpiralFit.hats(fit.curve().grid(), new int[] {16}));
      assertThat(reduced).hasSize(3);
      assertThat(reduced[0]).isEqualTo(full[i][0]);
      assertThat(reduced[1]).isEqualTo(full[i][1]);
      assertThat(reduced[2] / 400).isCloseTo(done, within(1e-9));
    }
  }
}
