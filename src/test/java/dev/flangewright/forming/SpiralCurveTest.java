package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Curves of linear curvature against circles, the clothoid's tables and difference quotients. */
class SpiralCurveTest {

  private static SpiralCurve circle(double radius, double heading) {
    var grid = KnotGrid.of(400, 40);
    var curvature = new double[grid.places()];
    Arrays.fill(curvature, 1 / radius);
    return new SpiralCurve(grid, new Point(7, -3), heading, curvature);
  }

  /** κ = π·s/a², so that the curve is a·(C(s/a), S(s/a)) with the Fresnel integrals. */
  private static SpiralCurve clothoid(double a) {
    var grid = KnotGrid.of(a, 40);
    var curvature = new double[grid.places()];
    for (int i = 0; i < curvature.length; i++) {
      curvature[i] = Math.PI / a * i / grid.cells();
    }
    return new SpiralCurve(grid, new Point(0, 0), 0, curvature);
  }

  @ParameterizedTest
  @CsvSource({
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 7.7 (from memory;
    // recomputed by power series).
    "0.5, 0.4923442, 0.0647324",
    "1.0, 0.7798934, 0.4382591",
  })
  void a_clothoid_lies_where_the_fresnel_integrals_say(double u, double c, double s) {
    var point = clothoid(500).at(500 * u);
    // One unit of the seventh decimal is 5e-5 mm; steps of 2 mm add 1e-9 mm each.
    assertThat(point.xMm()).isCloseTo(500 * c, within(5e-5));
    assertThat(point.yMm()).isCloseTo(500 * s, within(5e-5));
    assertThat(clothoid(500).heading(500 * u)).isCloseTo(Math.PI / 2 * u * u, within(1e-12));
    assertThat(clothoid(500).curvaturePerMm(500 * u)).isCloseTo(Math.PI * u / 500, within(1e-15));
  }

  @ParameterizedTest
  @CsvSource({"300, 0", "300, 2.1", "-150, 0.4"})
  void equal_curvature_is_a_circle_that_goes_on_beyond_both_ends(double radius, double heading) {
    var curve = circle(radius, heading);
    // The centre lies a radius to the left of the start.
    var centre = curve.start().toTheRight(heading, -radius);
    for (double arc : new double[] {-60, -1, 0, 0.3, 17, 200, 399.9, 400, 470}) {
      double turned = heading + arc / radius;
      var expected = centre.toTheRight(turned, radius);
      // A chord in 2 mm steps is short by (h/R)⁴/1920 of itself; beyond an end one step is 70 mm.
      double miss = arc < 0 || arc > 400 ? 0.005 : 1e-8;
      assertThat(curve.at(arc).distanceMm(expected)).isLessThan(miss);
      assertThat(curve.heading(arc)).isCloseTo(turned, within(1e-12));
    }
    assertThat(curve.startHeading()).isEqualTo(heading);
    assertThat(curve.curvature()).containsOnly(1 / radius);
    assertThat(curve.grid().lengthMm()).isEqualTo(400);
  }

  @Test
  void a_point_inside_a_left_turn_deviates_to_the_left_by_its_distance_from_the_arc() {
    var curve = circle(300, 0.8);
    var centre = curve.start().toTheRight(0.8, -300);
    for (double off : new double[] {-5, 0, 0.25, 12}) {
      var point = centre.toTheRight(0.8 + 130.0 / 300, 300 - off);
      for (double guess : new double[] {90, 130, 160}) {
        double foot = curve.foot(point, guess);
        // Every step leaves off/R of the distance: 40 mm·(12/300)⁴.
        assertThat(foot).isCloseTo(130, within(2e-4));
        assertThat(curve.deviation(point, foot)).isCloseTo(off, within(1e-8));
      }
    }
  }

  @Test
  void the_foot_of_a_point_far_off_stays_within_a_length_of_the_curve() {
    var straight = new SpiralCurve(new KnotGrid(100, 4, 5), new Point(0, 0), 0, new double[5]);
    assertThat(straight.foot(new Point(-5000, 3), 20)).isEqualTo(-100);
    assertThat(straight.foot(new Point(5000, 3), 20)).isEqualTo(200);
    assertThat(straight.foot(new Point(150, 3), 20)).isCloseTo(150, within(1e-12));
  }

  @Test
  void sensitivities_are_what_the_curve_does_when_it_is_shifted_turned_or_bent() {
    var grid = new KnotGrid(120, 6, 20);
    double[] curvature = {0.002, 0.003, 0.004, 0.001, -0.002, -0.001, 0};
    var start = new Point(10, 20);
    var curve = new SpiralCurve(grid, start, 0.4, curvature);
    double[] arcs = {0, 13, 45, 60, 101, 120};
    double[][] sensitivity = curve.sensitivity(arcs);
    for (int column = 0; column < sensitivity[0].length; column++) {
      // Small enough for second-order terms below 1e-6 of the first.
      double step = column == 0 ? 1e-3 : column == 1 ? 1e-6 : 1e-8;
      var bent = curvature.clone();
      if (column > 1) {
        bent[column - 2] += step;
      }
      var moved =
          new SpiralCurve(
              grid,
              start.toTheRight(0.4, column == 0 ? -step : 0),
              0.4 + (column == 1 ? step : 0),
              bent);
      for (int i = 0; i < arcs.length; i++) {
        double to = curve.deviation(moved.at(arcs[i]), arcs[i]) / step;
        // Linear between nodes 1 mm apart: h²/8 of the second derivative, which is 1.
        assertThat(sensitivity[i][column])
            .as("column %s at %s mm", column, arcs[i])
            .isCloseTo(to, within(column < 2 ? 1e-4 : 0.2));
      }
    }
  }

  @Test
  void bending_a_straight_line_everywhere_moves_it_by_half_the_square_of_the_length() {
    // A curvature of κ over a length s moves a line to its left by κ·s²/2: derived.
    var straight = new SpiralCurve(KnotGrid.of(200, 20), new Point(0, 0), 1.1, new double[33]);
    double[] row = straight.sensitivity(new double[] {150})[0];
    assertThat(row[0]).isCloseTo(1, within(1e-12));
    assertThat(row[1]).isCloseTo(150, within(1e-9));
    assertThat(Arrays.stream(row).skip(2).sum()).isCloseTo(150 * 150 / 2.0, within(1e-6));
  }

  private static final KnotGrid GRID = new KnotGrid(400, 8, 25);
  private static final double LITTLE = 1e-7;

  private static SpiralCurve bent(int place, double perMm) {
    double[] curvature = {0.001, 0.002, 0.004, 0.003, 0, -0.001, -0.002, 0.001, 0.002};
    curvature[place] += perMm;
    return new SpiralCurve(GRID, new Point(10, 20), 0.3, curvature);
  }

  @Test
  void a_little_more_curvature_moves_the_points_behind_it_as_said() {
    double[] arcs = {0, 1, 40, 50, 61.3, 175, 200, 333, 399, 400};
    double[][] moves = bent(0, 0).sensitivity(arcs);
    for (int place = 0; place < GRID.places(); place++) {
      for (int i = 0; i < arcs.length; i++) {
        var there = bent(place, LITTLE).at(arcs[i]);
        var back = bent(place, -LITTLE).at(arcs[i]);
        var curve = bent(0, 0);
        double move = curve.deviation(there, arcs[i]) - curve.deviation(back, arcs[i]);
        // Between two nodes 2 mm apart the movement is read off its chord: short by h²/8 = 0.5 mm².
        assertThat(moves[i][place + 2]).isCloseTo(move / (2 * LITTLE), within(0.51));
      }
    }
  }
}
