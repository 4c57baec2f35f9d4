package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Corners are told, kept and not smoothed; bends are not taken for corners. */
class CornersTest {

  /** Straight, a turn at (300, 0), straight again; stations 15 mm apart, the 21st at the turn. */
  private static List<Point> bent(double turnDeg) {
    var points = new ArrayList<Point>();
    for (int i = -20; i <= 20; i++) {
      double angle = i < 0 ? 0 : Math.toRadians(turnDeg);
      points.add(new Point(300 + 15 * i * Math.cos(angle), 15 * i * Math.sin(angle)));
    }
    return points;
  }

  @ParameterizedTest
  @ValueSource(doubles = {-60, -30, 30, 90})
  void a_corner_is_found_where_it_is_with_its_turn(double turn) {
    var corners = FairFit.of(Shape.read(bent(turn)), 0).corners();
    assertThat(corners).hasSize(1);
    assertThat(corners.get(0).stationNumber()).isEqualTo(21);
    assertThat(corners.get(0).turnDeg()).isCloseTo(turn, within(1e-6));
  }

  @Tag("trials")
  @ParameterizedTest
  @ValueSource(doubles = {-60, 30, 90})
  void a_corner_read_with_scatter_stays_a_corner_between_straight_runs(double turn) {
    for (int seed = 0; seed < 20; seed++) {
      var read = Shape.read(Shape.scattered(bent(turn), new Random(seed), 0.3));
      var fit = FairFit.of(read, 0.6);
      assertThat(fit.corners()).hasSize(1);
      assertThat(fit.corners().get(0).stationNumber()).isEqualTo(21);
      // Two parabolas over 36 mm read to 0.3 mm: about 2° each.
      assertThat(fit.corners().get(0).turnDeg()).isCloseTo(turn, within(9.0));
      assertThat(fit.degreesOfFreedom()).isEqualTo(4);
      assertThat(fit.contour().kind()).isEqualTo(FlangeKind.PLAIN);
      assertThat(fit.contour().points().get(20).distanceMm(new Point(300, 0))).isLessThan(0.6);
    }
  }

  @Tag("trials")
  @Test
  void beside_a_corner_an_arc_keeps_its_radius() {
    // 400 mm of arc of 250 mm radius, then a straight run 40° to the right of its end.
    var points = new ArrayList<>(Loft.circle(250, Loft.even(0, 1.6, 30)));
    var end = points.get(29);
    double heading = 1.6 + Math.PI / 2 - Math.toRadians(40);
    for (int i = 1; i <= 20; i++) {
      points.add(end.toTheRight(heading + Math.PI / 2, 14.0 * i));
    }
    for (int seed = 0; seed < 20; seed++) {
      var fit = FairFit.of(Shape.read(Shape.scattered(points, new Random(seed), 0.3)), 0.6);
      assertThat(fit.corners()).hasSize(1);
      assertThat(fit.corners().get(0).stationNumber()).isEqualTo(30);
      assertThat(fit.contour().radiusMm(10)).isCloseTo(250, withinPercentage(2));
      assertThat(fit.contour().kindAt(45)).isEqualTo(FlangeKind.PLAIN);
    }
  }

  @Tag("trials")
  @ParameterizedTest
  @EnumSource
  void a_fair_contour_has_no_corners_however_it_is_read(Shape shape) {
    for (int count : new int[] {8, 40, 400}) {
      assertThat(FairFit.of(Shape.read(shape.points(shape.even(count))), 0).corners()).isEmpty();
      for (int seed = 0; seed < 10; seed++) {
        var random = new Random(seed);
        var read = Shape.scattered(shape.points(shape.uneven(count, random)), random, 0.3);
        assertThat(FairFit.of(Shape.read(read), 0.6).corners()).isEmpty();
      }
    }
  }

  @Test
  void a_tight_bend_drawn_with_stations_enough_is_no_corner() {
    // 90° of 40 mm radius between straight runs, stations 6 mm apart.
    var points =
        Loft.withCurvature(
            Loft.even(0, 300, 51), s -> s < 120 || s > 120 + 20 * Math.PI ? 0 : 1.0 / 40);
    assertThat(FairFit.of(Shape.read(points), 0).corners()).isEmpty();
  }

  @Test
  void a_corner_of_the_other_hand_turns_the_same_way() {
    var points = bent(50);
    var other = FairFit.of(Shape.read(Loft.mirrored(points)), 0).corners();
    // Seen in a mirror and travelled the other way: left stays left.
    assertThat(other.get(0).turnDeg()).isCloseTo(50, within(1e-6));
  }

  /**
   * With half the tolerance as standard deviation σ, the direction of a parabola through three even
   * readings h apart has at its end the standard error σ·√6.5/h, through four σ·√2.45/h (contrasts
   * (−3, 4, −1)/2 and (−21, 13, 17, −9)/20, derived). The readings stand 15 mm apart.
   */
  @ParameterizedTest
  @CsvSource({
    // Tolerance, turn, corner: 4·√2·(0.3·√6.5/15) = 16.5°; the reach of 36 mm holds two readings.
    "0.6, 16.2, false",
    "0.6, -16.2, false",
    "0.6, 16.9, true",
    "0.6, -16.9, true",
    // 60 times 0.8 mm reach three readings: 4·√2·(0.4·√2.45/15) = 13.5°, below the 15°.
    "0.8, 14.8, false",
    "0.8, 15.2, true",
    // Little tolerance, and two readings are looked at although the second is beyond 20 mm.
    "0.01, 14.9, false",
    "0.01, -15.1, true",
    "0, 15.1, true",
  })
  void a_turn_is_a_corner_when_it_is_sharp_and_sure(double tolerance, double turn, boolean corner) {
    assertThat(Corners.of(Shape.read(bent(turn)), tolerance)).hasSize(corner ? 1 : 0);
  }

  /** Three straight lines; stations 15 mm apart, turns at the 11th and a number of steps on. */
  private static List<Point> twiceBent(int steps, double first, double second) {
    var points = new ArrayList<Point>();
    var here = new Point(0, 0);
    double heading = 3;
    for (int i = 0; i <= 20 + steps; i++) {
      points.add(here);
      heading += i == 10 ? Math.toRadians(first) : i == 10 + steps ? Math.toRadians(second) : 0;
      here = here.toTheRight(heading + Math.PI / 2, 15);
    }
    return points;
  }

  @Test
  void two_corners_are_told_in_the_order_of_travel() {
    var corners = Corners.of(Shape.read(twiceBent(8, 40, -70)), 0.3);
    assertThat(corners).extracting(Corner::stationNumber).containsExactly(11, 19);
    assertThat(corners.get(0).turnDeg()).isCloseTo(40, within(1e-9));
    assertThat(corners.get(1).turnDeg()).isCloseTo(-70, within(1e-9));
  }

  @Test
  void of_two_corners_within_a_reach_the_sharper_counts() {
    // 45 mm apart, a reach of 48 mm: one; a reach of 36 mm: two.
    assertThat(Corners.of(Shape.read(twiceBent(3, 20, -70)), 0.8))
        .extracting(Corner::stationNumber)
        .containsExactly(14);
    assertThat(Corners.of(Shape.read(twiceBent(3, 20, -70)), 0.6))
        .extracting(Corner::stationNumber)
        .containsExactly(11, 14);
  }

  @Test
  void a_corner_next_to_an_end_is_not_looked_at() {
    var points = bent(30);
    assertThat(Corners.of(Shape.read(points.subList(18, 41)), 0))
        .extracting(Corner::stationNumber)
        .containsExactly(3);
    assertThat(Corners.of(Shape.read(points.subList(19, 41)), 0)).isEmpty();
    assertThat(Corners.of(Shape.read(points.subList(0, 23)), 0))
        .extracting(Corner::stationNumber)
        .containsExactly(21);
    assertThat(Corners.of(Shape.read(points.subList(0, 22)), 0)).isEmpty();
  }

  @Test
  void between_bends_the_turn_of_a_corner_is_that_of_the_tangents() {
    // Two arcs of 300 mm radius, one to either side, that meet at 50°; 5 mm apart, so that the
    // parabola runs over 20 mm: off by (20/300)³/6 or so, 0.003°.
    var points = new ArrayList<Point>();
    for (int i = 40; i >= 1; i--) {
      double s = 5.0 * i / 300;
      points.add(new Point(-300 * Math.sin(s), 300 * (1 - Math.cos(s))));
    }
    double turn = Math.toRadians(50);
    for (int i = 0; i <= 40; i++) {
      double s = 5.0 * i / 300;
      double along = 300 * Math.sin(s);
      double left = -300 * (1 - Math.cos(s));
      points.add(
          new Point(
              along * Math.cos(turn) - left * Math.sin(turn),
              along * Math.sin(turn) + left * Math.cos(turn)));
    }
    var corners = Corners.of(Shape.read(points), 0);
    assertThat(corners).hasSize(1);
    assertThat(corners.get(0).stationNumber()).isEqualTo(41);
    assertThat(corners.get(0).turnDeg()).isCloseTo(50, within(0.05));
  }
}
