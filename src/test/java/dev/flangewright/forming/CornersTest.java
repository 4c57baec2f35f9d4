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
}
