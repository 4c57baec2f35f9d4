package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Curvature and arc length from stations, against curves whose own are known in closed form. */
class CurvatureTest {

  @ParameterizedTest
  @CsvSource({"40, 0.6, 5", "500, 1.2, 12", "500, 1.2, 40", "500, 1.2, 400", "8000, 0.1, 30"})
  void on_a_circle_radius_and_length_are_exact(double radius, double angle, int count) {
    for (double[] at : new double[][] {Loft.even(0, angle, count), Loft.uneven(0, angle, count)}) {
      var contour = Loft.through(Loft.circle(radius, at));
      for (int i = 0; i < count; i++) {
        // Exact but for rounding, which grows as coordinates over sagitta: 1e-6 % is ample.
        assertThat(contour.radiusMm(i)).isCloseTo(radius, withinPercentage(1e-6));
        assertThat(contour.curvaturePerMm(i)).isPositive();
        assertThat(contour.arcMm(i)).isCloseTo(radius * at[i], within(1e-6));
      }
      assertThat(contour.lengthMm()).isCloseTo(radius * angle, within(1e-6));
    }
  }

  @Test
  void a_circle_travelled_the_other_way_is_a_stretch_of_the_same_radius() {
    var contour = Loft.through(Loft.reversed(Loft.circle(300, Loft.even(0, 1, 20))));
    assertThat(contour.kind()).isEqualTo(FlangeKind.STRETCH);
    assertThat(contour.curvaturePerMm(7)).isCloseTo(-1.0 / 300, within(1e-10));
  }

  @Test
  void three_stations_are_enough_for_a_circle() {
    var contour = Loft.through(Loft.circle(250, new double[] {0, 0.1, 0.4}));
    for (int i = 0; i < 3; i++) {
      assertThat(contour.radiusMm(i)).isCloseTo(250, withinPercentage(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {15, 30, 60, 120})
  void on_an_ellipse_the_curvature_is_of_second_order(int count) {
    double a = 400;
    double b = 300;
    for (double[] at : new double[][] {Loft.even(0, 1.4, count), Loft.uneven(0, 1.4, count)}) {
      var contour = Loft.through(Loft.ellipse(a, b, at));
      double step = Math.max(contour.lengthMm() / (count - 1), 20);
      for (int i = 0; i < count; i++) {
        double expected = a * b / Math.pow(Math.hypot(a * Math.sin(at[i]), b * Math.cos(at[i])), 3);
        // |κ''|·h²/6 with |κ''| below 8/(b²·R): about (h/b)²; h = arm, three at an end or a gap.
        double relative = 8 * Math.pow(step / b, 2);
        assertThat(contour.curvaturePerMm(i)).isCloseTo(expected, withinPercentage(100 * relative));
      }
    }
  }

  @Test
  void on_a_clothoid_the_curvature_grows_in_a_straight_line() {
    DoubleUnaryOperator curvature = s -> s / 600 / 150;
    for (double[] at : new double[][] {Loft.even(0, 600, 41), Loft.uneven(0, 600, 41)}) {
      var contour = Loft.through(Loft.withCurvature(at, curvature));
      for (int i = 0; i < at.length; i++) {
        // Divided differences are exact on a cubic; what is left is the turn between stations:
        // κ·(κh)²/24-sized terms, below 1e-3 of the largest curvature 1/150 at h = 15 to 22 mm.
        assertThat(contour.curvaturePerMm(i))
            .isCloseTo(curvature.applyAsDouble(at[i]), within(1e-3 / 150));
      }
    }
  }

  @Test
  void on_a_superellipse_the_corner_is_found() {
    double a = 500;
    double n = 2.6;
    var at = Loft.even(0.02, Math.PI / 2 - 0.02, 60);
    var contour =
        Loft.through(
            Loft.curve(
                at,
                u ->
                    new Point(a * Math.pow(Math.cos(u), 2 / n), a * Math.pow(Math.sin(u), 2 / n))));
    double tightest = contour.runs().get(0).tightestRadiusMm();
    // At the corner x = y = a·2^(−1/n) of |x|^n + |y|^n = a^n: κ = (n − 1)·√2/(2·x).
    double expected = 2 * a * Math.pow(2, -1 / n) / ((n - 1) * Math.sqrt(2));
    assertThat(contour.runs()).hasSize(1);
    assertThat(tightest).isCloseTo(expected, withinPercentage(0.5));
  }

  @Test
  void beside_an_arc_a_straight_run_does_not_ring() {
    DoubleUnaryOperator curvature = s -> s < 200 || s > 500 ? 0 : 1.0 / 200;
    for (double[] at : new double[][] {Loft.even(0, 700, 47), Loft.uneven(0, 700, 47)}) {
      var contour = Loft.through(Loft.withCurvature(at, curvature));
      for (int i = 0; i < at.length; i++) {
        assertThat(contour.curvaturePerMm(i)).isBetween(0.0, 1.0 / 200 + 1e-6);
        // An arm is at most its reach of 20 mm and the longest gap, 28 mm; the circle it belongs
        // to may be one gap further on.
        boolean nearJump = Math.abs(at[i] - 200) < 76 || Math.abs(at[i] - 500) < 76;
        if (!nearJump) {
          // The curve is integrated to 3e-6 mm, which is 3e-8/mm over an arm of 20 mm.
          assertThat(contour.curvaturePerMm(i))
              .isCloseTo(curvature.applyAsDouble(at[i]), within(2e-6));
        }
      }
    }
  }

  @Test
  void a_curvature_that_peaks_at_the_end_is_not_overshot() {
    // A quarter ellipse from vertex to vertex: the tightest place is the first station.
    double a = 600;
    double b = 400;
    for (int count : new int[] {20, 40, 80, 300}) {
      var contour = Loft.through(Loft.ellipse(a, b, Loft.even(0, Math.PI / 2, count)));
      assertThat(contour.radiusMm(0)).isCloseTo(b * b / a, withinPercentage(1));
      assertThat(contour.radiusMm(count - 1)).isCloseTo(a * a / b, withinPercentage(1));
    }
  }

  @Test
  void at_the_end_of_an_arc_the_curvature_is_not_carried_on_beyond_a_quarter() {
    DoubleUnaryOperator curvature = s -> s < 30 ? 1.0 / 100 : 0;
    var contour = Loft.through(Loft.withCurvature(Loft.even(0, 300, 21), curvature));
    for (int i = 0; i < 21; i++) {
      assertThat(contour.curvaturePerMm(i)).isBetween(0.0, 1.25 / 100);
    }
  }

  @ParameterizedTest
  @CsvSource({"40, 0.01", "200, 0.01", "1000, 0.01", "40, 0.001", "1000, 0.001"})
  void rounded_coordinates_move_the_curvature_by_what_the_method_states(int count, double step) {
    double radius = 500;
    var exact = Loft.circle(radius, Loft.even(0.1, 1.3, count));
    var contour = Loft.through(Loft.rounded(exact, step));
    double arm = Math.max(20, contour.lengthMm() / (count - 1));
    // Worst case: each of three stations off by half a step in both axes, 0.71 steps, counted
    // once, twice and once in the offset: 2.83·step over L². Carrying on to an end adds a quarter.
    double worst = 2.83 * step / (arm * arm);
    for (int i = 0; i < count; i++) {
      assertThat(contour.curvaturePerMm(i)).isCloseTo(1 / radius, within(1.25 * worst));
    }
    assertThat(contour.kind()).isEqualTo(FlangeKind.SHRINK);
    assertThat(contour.runs()).hasSize(1);
  }

  @Test
  void the_other_hand_has_the_same_figures_station_for_station() {
    var points = Loft.ellipse(400, 250, Loft.uneven(0.1, 1.5, 37));
    var one = Loft.through(points);
    var other = Loft.through(Loft.mirrored(points));
    int last = points.size() - 1;
    for (int i = 0; i <= last; i++) {
      // Same arithmetic in another order: rounding only.
      assertThat(other.curvaturePerMm(last - i))
          .isCloseTo(one.curvaturePerMm(i), withinPercentage(1e-7));
    }
    assertThat(other.lengthMm()).isCloseTo(one.lengthMm(), within(1e-9));
  }

  @ParameterizedTest
  @EnumSource
  void exact_stations_give_the_curvature_to_a_tenth_of_a_percent_away_from_the_ends(Shape shape) {
    for (int count : new int[] {40, 60, 120, 400}) {
      assertThat(worstPercentInside(shape, shape.even(count))).isLessThan(0.1);
      for (int seed = 0; seed < 25; seed++) {
        double[] at = shape.uneven(count, new Random(seed));
        assertThat(worstPercentInside(shape, at)).as("%d, %d", count, seed).isLessThan(0.1);
      }
    }
  }

  /** More than 60 mm from the ends: a circle's arm, its neighbours a reach away and theirs. */
  private static double worstPercentInside(Shape shape, double[] at) {
    var contour = Loft.through(shape.points(at));
    double worst = 0;
    for (int i = 0; i < at.length; i++) {
      if (Math.min(contour.arcMm(i), contour.lengthMm() - contour.arcMm(i)) > 60) {
        double ratio = contour.curvaturePerMm(i) / shape.curvaturePerMm(at[i]);
        worst = Math.max(worst, 100 * Math.abs(ratio - 1));
      }
    }
    return worst;
  }

  @ParameterizedTest
  @MethodSource("jumps")
  void where_the_curvature_jumps_it_is_overshot_by_little_and_never_changes_sign(
      double[] at, double curvature, double from, double middle, double to) {
    var arc = new Curvature(Loft.withCurvature(at, s -> s < from || s > to ? 0 : curvature));
    var reverse =
        new Curvature(
            Loft.withCurvature(
                at, s -> s < from || s > to ? 0 : s < middle ? curvature : -curvature));
    for (int i = 0; i < at.length; i++) {
      // An arc this long is not overshot at all. Half of it is three arms when stations are few,
      // which cannot be told from a smooth bend: half a per cent of each circle and half as much
      // again for each line between two circles, 1.25 % in all. The curve is integrated to 1e-6
      // mm: 1e-8/mm.
      assertThat(arc.perMm(i)).isBetween(-1e-8, curvature + 1e-8);
      assertThat(Math.abs(reverse.perMm(i))).isLessThan(1.0125 * curvature);
    }
  }

  /** Fixed seed: arcs of 80 to 600 mm radius between straight runs, 25 to 350 stations. */
  static Stream<Arguments> jumps() {
    var random = new Random(12);
    return Stream.generate(
            () -> {
              int count = (int) Math.exp(random.nextDouble(Math.log(25), Math.log(350)));
              double[] at =
                  random.nextBoolean() ? Loft.even(0, 700, count) : Loft.uneven(0, 700, count);
              return Arguments.of(
                  at,
                  1.0 / random.nextInt(80, 600),
                  random.nextDouble(150, 250),
                  350.0,
                  random.nextDouble(430, 520));
            })
        .limit(40);
  }

  @Test
  void turning_the_axes_changes_nothing() {
    var points = Loft.ellipse(400, 250, Loft.even(0.1, 1.5, 37));
    double c = Math.cos(0.7);
    double s = Math.sin(0.7);
    var turned =
        points.stream()
            .map(p -> new Point(c * p.xMm() - s * p.yMm(), s * p.xMm() + c * p.yMm()))
            .toList();
    for (int i = 0; i < points.size(); i++) {
      assertThat(Loft.through(turned).curvaturePerMm(i))
          .isCloseTo(Loft.through(points).curvaturePerMm(i), withinPercentage(1e-7));
    }
  }
}
