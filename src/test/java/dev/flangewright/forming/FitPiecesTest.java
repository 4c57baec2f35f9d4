package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Few readings, few freedoms: bands, corners and the rule of the tolerance in closed form. */
class FitPiecesTest {

  /** Points on the x axis, each off by a height. */
  private static List<Station> onLine(double spacing, double... heights) {
    var points = new ArrayList<Point>();
    for (int i = 0; i < heights.length; i++) {
      points.add(new Point(spacing * i, heights[i]));
    }
    return Shape.read(points);
  }

  /**
   * Six readings are too few for knots, so that the freer fit is a parabola. Its second-degree
   * coefficient has the contrasts (5, −1, −4, −4, −1, 5)·3/2 over 84 (Fisher and Yates, Statistical
   * Tables, table XXIII, from memory); κ is twice it. t at 97.5 % and six degrees is 2.447 (any t
   * table, from memory): n − p + 3 = 6 − 3 + 3.
   */
  @ParameterizedTest
  @CsvSource({"20, 0.4, 0", "50, 1, 0", "20, 0.4, 0.01", "20, 0.4, -0.03"})
  void the_band_of_a_straight_edge_of_six_readings_is_that_of_a_parabola(
      double spacing, double tolerance, double bow) {
    double[] contrast = {5, -1, -4, -4, -1, 5};
    double[] heights = new double[6];
    for (int i = 0; i < 6; i++) {
      heights[i] = bow * contrast[i];
    }
    var fit = FairFit.of(onLine(spacing, heights), tolerance);
    assertThat(fit.degreesOfFreedom()).isEqualTo(2);
    // A parabola through the contrasts leaves nothing, so that the tolerance alone is left.
    double s = Math.sqrt(3 * tolerance * tolerance / 4 / 6);
    double centre = 2 * 1.5 * bow / (spacing * spacing);
    double half = 2.4469 * s * 2 * 1.5 / Math.sqrt(84) / (spacing * spacing);
    for (var station : fit.stations()) {
      assertThat(station.curvaturePerMm()).isZero();
      assertThat(station.curvatureHighPerMm())
          .isCloseTo(Math.max(0, centre + half), within(2e-3 * half));
      assertThat(station.curvatureLowPerMm())
          .isCloseTo(Math.min(0, centre - half), within(2e-3 * half));
    }
  }

  @Test
  void readings_off_a_parabola_widen_the_band() {
    // (1, −5, 10, −10, 5, −1) is at right angles to every curve up to the fourth degree; its
    // squares add up to 252.
    double off = 0.02;
    double[] heights = {off, -5 * off, 10 * off, -10 * off, 5 * off, -off};
    var station = FairFit.of(onLine(20, heights), 0.4).stations().get(3);
    double s = Math.sqrt((252 * off * off + 3 * 0.4 * 0.4 / 4) / 6);
    double half = 2.4469 * s * 2 * 1.5 / Math.sqrt(84) / 400;
    assertThat(station.curvatureHighPerMm()).isCloseTo(half, within(2e-3 * half));
    assertThat(station.curvatureLowPerMm()).isCloseTo(-half, within(2e-3 * half));
  }

  @Test
  void with_more_stations_the_freer_fit_has_more_knots_and_a_wider_band_at_the_ends() {
    // On a straight edge of exact readings the band is t·s·√w'(A'A)⁻¹w alone.
    double[] middle = new double[3];
    int[] counts = {6, 7, 9};
    for (int i = 0; i < 3; i++) {
      var stations = FairFit.of(onLine(20, new double[counts[i]]), 0.4).stations();
      middle[i] = stations.get(0).curvatureHighPerMm();
      for (int k = 0; k < counts[i]; k++) {
        var mirrored = stations.get(counts[i] - 1 - k);
        assertThat(stations.get(k).curvatureHighPerMm())
            .isCloseTo(mirrored.curvatureHighPerMm(), withinPercentage(0.01));
        assertThat(stations.get(k).curvatureLowPerMm())
            .isCloseTo(-stations.get(k).curvatureHighPerMm(), withinPercentage(0.01));
      }
    }
    // Two knots need four unknowns of at least seven readings, three knots five of eight: the end
    // of a freer fit is less sure although it has more readings.
    assertThat(middle[1]).isGreaterThan(1.5 * middle[0]);
    assertThat(middle[2]).isGreaterThan(middle[1]);
  }

  /** An arc of 250 mm radius, then straight on after a corner of the given turn. */
  private static List<Point> arcAndLine(double turnDeg) {
    var points = new ArrayList<>(Loft.circle(250, Loft.even(0, 1.5, 30)));
    var end = points.get(29);
    double heading = 1.5 + Math.PI / 2 + Math.toRadians(turnDeg);
    for (int i = 1; i <= 25; i++) {
      points.add(end.toTheRight(heading + Math.PI / 2, 14.0 * i));
    }
    return points;
  }

  @ParameterizedTest
  @CsvSource({"40", "-50"})
  void exact_readings_beside_a_corner_come_back_as_an_arc_and_a_line(double turn) {
    var fit = FairFit.of(Shape.read(arcAndLine(turn)), 0.3);
    assertThat(fit.corners()).hasSize(1);
    assertThat(fit.corners().get(0).stationNumber()).isEqualTo(30);
    assertThat(fit.corners().get(0).turnDeg()).isCloseTo(turn, within(0.5));
    // Three for the circle, two for the line.
    assertThat(fit.degreesOfFreedom()).isEqualTo(5);
    assertThat(fit.contour().lengthMm()).isCloseTo(1.5 * 250 + 25 * 14, within(1e-3));
    assertThat(fit.contour().arcMm(29)).isCloseTo(1.5 * 250, within(1e-3));
    assertThat(fit.maxDeviationMm()).isLessThan(1e-4);
    assertThat(fit.stations()).hasSize(55);
    for (int i = 0; i < 55; i++) {
      // The corner takes the sharper curvature of its two sides.
      double expected = i <= 29 ? 1.0 / 250 : 0;
      assertThat(fit.stations().get(i).curvaturePerMm()).isCloseTo(expected, within(1e-7));
      assertThat(fit.stations().get(i).number()).isEqualTo(i + 1);
    }
    var corner = fit.stations().get(29);
    assertThat(corner.curvatureHighPerMm()).isGreaterThan(1.0 / 250);
    assertThat(corner.curvatureLowPerMm()).isNegative();
    assertThat(fit.stations().get(20).curvatureLowPerMm()).isPositive();
    assertThat(fit.stations().get(45).curvatureHighPerMm()).isLessThan(1.0 / 250);
  }

  @Test
  void travelled_the_other_way_the_corner_still_takes_the_sharper_curvature() {
    var fit = FairFit.of(Shape.read(Loft.reversed(arcAndLine(40))), 0.3);
    assertThat(fit.corners().get(0).stationNumber()).isEqualTo(26);
    assertThat(fit.stations().get(25).curvaturePerMm()).isCloseTo(-1.0 / 250, within(1e-7));
    assertThat(fit.contour().arcMm(25)).isCloseTo(350, within(1e-3));
  }

  @Test
  void a_corner_read_beside_both_of_its_lines_is_moved_half_way_between_their_ends() {
    // Two lines through the readings but the corner's: y = 0 and x = 300. The corner's reading is
    // 0.2 mm off each, and counts in both.
    var points = new ArrayList<Point>();
    for (int i = 0; i < 20; i++) {
      points.add(new Point(15 * i, 0));
    }
    points.add(new Point(300.2, -0.2));
    for (int i = 1; i <= 20; i++) {
      points.add(new Point(300, 15 * i));
    }
    var fit = FairFit.of(Shape.read(points), 0.4);
    assertThat(fit.corners()).extracting(Corner::stationNumber).containsExactly(21);
    // Least squares of 21 even points, of which the last is off by d: the line passes it at
    // 2(2n − 1)/(n(n + 1)) = 41/231 of d (the leverage of an end point, derived).
    double followed = 0.2 * 2 * 41 / (21 * 22.0);
    var corner = fit.stations().get(20);
    // The first line's end is at (300.2, −followed), the second's at (300 + followed, −0.2).
    assertThat(corner.fitted().xMm()).isCloseTo(300.1 + followed / 2, within(1e-3));
    assertThat(corner.fitted().yMm()).isCloseTo(-0.1 - followed / 2, within(1e-3));
    // To the right of travel, away from the web, on both.
    assertThat(corner.deviationMm()).isCloseTo(-(0.2 - followed), within(1e-3));
    assertThat(corner.measured()).isEqualTo(new Point(300.2, -0.2));
  }

  @Test
  void readings_that_scatter_past_each_other_keep_their_order_on_the_fit() {
    // The third reading stands before the second.
    var points = new ArrayList<>(Loft.curve(Loft.even(0, 100, 21), s -> new Point(s, 0)));
    points.set(8, new Point(34, 0.1));
    var contour = FairFit.of(Shape.read(points), 0.3).contour();
    for (int i = 1; i < 21; i++) {
      assertThat(contour.arcMm(i) - contour.arcMm(i - 1)).isGreaterThan(0.0199);
    }
    assertThat(contour.arcMm(8) - contour.arcMm(7)).isCloseTo(0.02, within(1e-9));
  }

  @Test
  void a_broken_line_of_curvature_needs_a_freedom_for_every_knot_and_no_more() {
    // 1/500 up to 1/200 at 200 of 640 mm and back: three knots, and two for place and direction.
    var points =
        Loft.withCurvature(
            Loft.even(0, 640, 60),
            s -> 1.0 / 500 + (1.0 / 200 - 1.0 / 500) * (s < 200 ? s / 200 : (640 - s) / 440));
    for (var hand : List.of(points, Loft.mirrored(points))) {
      var fit = FairFit.of(Shape.read(hand), 0.3);
      assertThat(fit.degreesOfFreedom()).isEqualTo(5);
      assertThat(fit.maxDeviationMm()).isLessThan(0.01);
      // The freer fit has the same knots among its own, so that on exact readings the band lies
      // evenly about the fit.
      for (var station : fit.stations()) {
        double middle = (station.curvatureLowPerMm() + station.curvatureHighPerMm()) / 2;
        assertThat(middle).isCloseTo(station.curvaturePerMm(), within(2e-6));
      }
    }
  }

  @Test
  void a_straight_run_between_two_bends_costs_nothing_and_stays_straight() {
    var points =
        Loft.withCurvature(
            Loft.even(0, 640, 60),
            s -> s < 200 ? (200 - s) / 200 / 250 : s < 440 ? 0 : -(s - 440) / 200 / 250);
    var fit = FairFit.of(Shape.read(points), 0.3);
    assertThat(fit.degreesOfFreedom()).isEqualTo(4);
    assertThat(fit.contour().kind()).isEqualTo(FlangeKind.MIXED);
    for (int i = 20; i < 40; i++) {
      assertThat(fit.contour().curvaturePerMm(i)).isZero();
    }
    // A knot that ends a bend on a straight edge is set to nothing too.
    assertThat(fit.stations().get(0).curvaturePerMm()).isCloseTo(1.0 / 250, within(1e-5));
    assertThat(fit.stations().get(59).curvaturePerMm()).isCloseTo(-1.0 / 250, within(1e-5));
  }

  @Test
  void scatter_far_beyond_the_tolerance_is_refused_however_many_readings_there_are() {
    // A wave of 1.2 mm from reading to reading.
    for (int count : new int[] {6, 9, 20}) {
      var heights = new double[count];
      for (int i = 0; i < count; i++) {
        heights[i] = i % 2 == 0 ? 0.6 : -0.6;
      }
      var refusal =
          catchThrowableOfType(FormingException.class, () -> FairFit.of(onLine(15, heights), 0.2));
      assertThat(refusal).as("%s readings", count).isNotNull();
      assertThat(refusal.reason()).isEqualTo(FormingException.Reason.NO_FAIR_CURVE);
      assertThat(refusal.value()).isEqualTo(0.2);
    }
  }

  /** In the middle a curve with knots enough bends to it; at an end there is no room for them. */
  @ParameterizedTest
  @CsvSource({"3", "31"})
  void a_misread_point_is_named_although_the_curve_is_drawn_to_it(int misread) {
    var heights = new double[32];
    heights[misread] = 3;
    var refusal =
        catchThrowableOfType(FormingException.class, () -> FairFit.of(onLine(20, heights), 0.2));
    assertThat(refusal.station()).isEqualTo(misread + 1);
  }

  @Test
  void what_is_read_must_be_stations_of_a_contour_before_it_is_fitted() {
    var one = List.of(new Station(1, 0, 0, 90, 20));
    var falling = List.of(new Station(2, 0, 0, 90, 20), new Station(1, 50, 0, 90, 20));
    var double_ =
        List.of(
            new Station(1, 0, 0, 90, 20),
            new Station(2, 50, 0, 90, 20),
            new Station(3, 50, 0.005, 90, 20));
    var reasons = new ArrayList<FormingException.Reason>();
    for (var read : List.of(one, falling, double_)) {
      reasons.add(
          catchThrowableOfType(FormingException.class, () -> FairFit.of(read, 0.5)).reason());
    }
    assertThat(reasons)
        .containsExactly(
            FormingException.Reason.TOO_FEW_STATIONS,
            FormingException.Reason.STATION_NUMBERS,
            FormingException.Reason.STATIONS_COINCIDE);
  }

  @Test
  void the_band_of_the_edge_strain_is_the_strain_at_both_ends_of_the_curvature_band() {
    var at = new Station(4, 0, 0, 90, 20);
    var read = new FitStation(4, at.point(), at.point(), 0, 0.002, -0.001, 0.004);
    var sheet = Sheet.of(1, 3);
    var band = read.edgeStrain(sheet, at);
    assertThat(band.low())
        .isEqualTo(FlangeSection.of(FlangeKind.SHRINK, 250, sheet, 20, 90).edgeStrain());
    assertThat(band.high())
        .isEqualTo(FlangeSection.of(FlangeKind.STRETCH, 1000, sheet, 20, 90).edgeStrain());
    var tight = new FitStation(4, at.point(), at.point(), 0, 0.002, -0.001, 0.5);
    var refusal = catchThrowableOfType(FormingException.class, () -> tight.edgeStrain(sheet, at));
    assertThat(refusal.station()).isEqualTo(4);
  }

  @Test
  void the_root_mean_square_is_that_of_the_deviations() {
    var points = Shape.scattered(Loft.circle(500, Loft.even(0, 1, 30)), new Random(3), 0.2);
    var fit = FairFit.of(Shape.read(points), 0.5);
    double sum = 0;
    double largest = 0;
    for (var station : fit.stations()) {
      sum += Math.pow(station.fitted().distanceMm(station.measured()), 2);
      largest = Math.max(largest, station.fitted().distanceMm(station.measured()));
    }
    assertThat(fit.rmsDeviationMm()).isCloseTo(Math.sqrt(sum / 30), within(1e-4));
    assertThat(fit.maxDeviationMm()).isCloseTo(largest, within(1e-4));
    assertThat(fit.toleranceMm()).isEqualTo(0.5);
  }

  /** Curvature from 1/400 to −1/400 and back twice: four knots, and five where more is asked. */
  private static FairFit wave(int count, double tolerance) {
    var points =
        Loft.withCurvature(
            Loft.even(0, 640, count),
            s -> (s < 200 ? 1 - s / 100 : s < 440 ? (s - 320) / 120 : 1 - (s - 440) / 100) / 400);
    return FairFit.of(Shape.read(points), tolerance);
  }

  @Test
  void a_third_of_the_readings_is_the_most_knots_a_fit_may_have() {
    assertThat(wave(12, 0.5).degreesOfFreedom()).isEqualTo(2 + 4);
    assertThat(wave(15, 0.2).degreesOfFreedom()).isEqualTo(2 + 5);
    for (var refused : List.<ThrowingCallable>of(() -> wave(11, 0.5), () -> wave(14, 0.2))) {
      var refusal = catchThrowableOfType(FormingException.class, refused);
      assertThat(refusal).isNotNull();
      assertThat(refusal.reason()).isEqualTo(FormingException.Reason.NO_FAIR_CURVE);
    }
  }

  @Test
  void of_the_knots_that_may_be_straight_those_are_set_to_nothing_that_cost_least() {
    // A bend of 1/300 that ends at 300 mm and goes on straight, read with little scatter: of the
    // knots the ones on the straight go, and those of the bend stay.
    var points =
        Loft.withCurvature(Loft.even(0, 640, 60), s -> s < 300 ? (300 - s) / 300 / 300 : 0);
    var fit = FairFit.of(Shape.read(Shape.scattered(points, new Random(2), 0.05)), 0.15);
    assertThat(fit.stations().get(0).curvaturePerMm()).isCloseTo(1.0 / 300, withinPercentage(5));
    for (int i = 32; i < 60; i++) {
      assertThat(fit.contour().curvaturePerMm(i)).isZero();
    }
    assertThat(fit.degreesOfFreedom()).isEqualTo(3);
  }
}
