package dev.flangewright.forming;

import static dev.flangewright.forming.FlangeKind.MIXED;
import static dev.flangewright.forming.FlangeKind.PLAIN;
import static dev.flangewright.forming.FlangeKind.SHRINK;
import static dev.flangewright.forming.FlangeKind.STRETCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Which runs shrink, which stretch, and where the contour's normal points. */
class ContourTest {

  @Test
  void two_stations_are_a_plain_straight_line() {
    var contour = Loft.through(List.of(new Point(0, 0), new Point(300, 400)));
    assertThat(contour.kind()).isEqualTo(PLAIN);
    assertThat(contour.lengthMm()).isEqualTo(500);
    assertThat(contour.radiusMm(0)).isInfinite();
    assertThat(contour.curvaturePerMm(1)).isZero();
    assertThat(contour.runs())
        .containsExactly(new ContourRun(PLAIN, 1, 2, Double.POSITIVE_INFINITY));
  }

  @Test
  void stations_on_a_slanting_line_are_plain() {
    var points = Loft.curve(Loft.uneven(0, 600, 30), s -> new Point(0.6 * s, 0.8 * s + 5));
    assertThat(Loft.through(points).kind()).isEqualTo(PLAIN);
    assertThat(Loft.through(Loft.rounded(points, 0.01)).kind()).isEqualTo(PLAIN);
  }

  @Test
  void a_contour_that_turns_left_shrinks_and_one_that_turns_right_stretches() {
    var points = Loft.circle(500, Loft.even(0, 1, 20));
    assertThat(Loft.through(points).kind()).isEqualTo(SHRINK);
    assertThat(Loft.through(Loft.reversed(points)).kind()).isEqualTo(STRETCH);
  }

  @Test
  void a_reverse_curve_with_a_straight_run_has_three_runs_and_is_mixed() {
    DoubleUnaryOperator curvature = s -> s < 250 ? 1.0 / 300 : s < 450 ? 0 : -1.0 / 150;
    for (double step : new double[] {1e-9, 0.01}) {
      var points = Loft.rounded(Loft.withCurvature(Loft.even(0, 700, 71), curvature), step);
      var contour = Loft.through(points);
      assertThat(contour.kind()).isEqualTo(MIXED);
      assertThat(contour.runs()).extracting(ContourRun::kind).contains(SHRINK, PLAIN, STRETCH);
      var first = contour.runs().get(0);
      var last = contour.runs().get(contour.runs().size() - 1);
      assertThat(first.kind()).isEqualTo(SHRINK);
      // Rounding to 0.01 mm at arms of 15 to 20 mm: up to 6e-5/mm, 2 % of 1/300.
      assertThat(first.tightestRadiusMm()).isCloseTo(300, within(8.0));
      assertThat(last.kind()).isEqualTo(STRETCH);
      assertThat(last.tightestRadiusMm()).isCloseTo(150, within(3.0));
      assertThat(contour.kindAt(35)).isEqualTo(PLAIN);
      assertThat(contour.radiusMm(35)).isInfinite();
    }
  }

  @Test
  void runs_cover_every_station_once_and_in_order() {
    DoubleUnaryOperator curvature = s -> Math.sin(s / 80) / 120;
    var contour = Loft.through(Loft.withCurvature(Loft.even(0, 900, 91), curvature));
    int next = 1;
    for (var run : contour.runs()) {
      assertThat(run.firstStation()).isEqualTo(next);
      next = run.lastStation() + 1;
    }
    assertThat(next).isEqualTo(92);
    assertThat(contour.kind()).isEqualTo(MIXED);
  }

  @Test
  void a_bow_of_less_than_a_tenth_of_a_millimetre_is_straight() {
    // Sagitta of an arc of length L and radius R: L²/(8R); 400²/(8·210000) = 0.095 mm.
    double[] at = Loft.even(0, 400.0, 21);
    var slight = Loft.withCurvature(at, s -> 1.0 / 210_000);
    var more = Loft.withCurvature(at, s -> 1.0 / 190_000);
    assertThat(Loft.through(slight).kind()).isEqualTo(PLAIN);
    assertThat(Loft.through(more).kind()).isEqualTo(SHRINK);
  }

  @Test
  void a_single_corner_between_straight_runs_counts() {
    var points =
        List.of(
            new Point(0, 0),
            new Point(100, 0),
            new Point(200, 0),
            new Point(300, 20),
            new Point(400, 40));
    assertThat(Loft.through(points).kind()).isEqualTo(SHRINK);
  }

  @Test
  void outward_is_away_from_the_centre_on_a_shrink_and_towards_it_on_a_stretch() {
    var points = Loft.circle(500, Loft.uneven(0.2, 1.4, 25));
    var shrink = Loft.through(points);
    var stretch = Loft.through(Loft.reversed(points));
    var centre = new Point(0, 0);
    for (int i = 0; i < points.size(); i++) {
      // The tangent at a station of a circle is exact, ends included.
      assertThat(shrink.offset(i, 17).distanceMm(centre)).isCloseTo(517, within(1e-6));
      assertThat(stretch.offset(i, 17).distanceMm(centre)).isCloseTo(483, within(1e-6));
    }
  }

  @Test
  void a_contour_trimmed_is_the_same_line_with_a_narrower_flange() {
    var points = Loft.circle(500, Loft.uneven(0.2, 1.4, 25));
    var wide = Loft.through(points);
    var trimmed = wide.trimmedTo(12);
    assertThat(trimmed.stations()).extracting(Station::widthMm).containsOnly(12.0);
    assertThat(trimmed.points()).isEqualTo(wide.points());
    assertThat(trimmed.lengthMm()).isEqualTo(wide.lengthMm());
    assertThat(trimmed.radiusMm(7)).isEqualTo(wide.radiusMm(7));
    assertThat(trimmed.kind()).isEqualTo(wide.kind());
    assertThat(wide.trimmedTo(40).stations()).isEqualTo(wide.stations());
  }

  @Test
  void stations_keep_the_numbers_of_the_file() {
    var contour =
        Contour.of(
            List.of(
                new Station(10, 0, 0, 88, 20),
                new Station(20, 100, 3, 89, 21),
                new Station(35, 200, 12, 90, 22)));
    assertThat(contour.stations()).extracting(Station::number).containsExactly(10, 20, 35);
    assertThat(contour.runs().get(0).lastStation()).isEqualTo(35);
  }

  @Test
  void slight_bows_either_way_at_the_start_are_one_straight_run() {
    // 250²/(8·500 000) = 0.016 mm of sagitta to the left, as much to the right, then a real bend.
    var points =
        Loft.withCurvature(
            Loft.even(0, 900, 46),
            s -> s < 250 ? 1.0 / 500_000 : s < 500 ? -1.0 / 500_000 : -(s - 500) / 400 / 200);
    var runs = Loft.through(points).runs();
    assertThat(runs).extracting(ContourRun::kind).containsExactly(PLAIN, STRETCH);
    assertThat(runs.get(0).firstStation()).isEqualTo(1);
    // The bend grows to the last station, which is the tightest.
    assertThat(runs.get(1).tightestRadiusMm()).isEqualTo(Loft.through(points).radiusMm(45));
  }

  @Test
  void a_ring_closed_upon_itself_is_a_shrink_all_round() {
    var ring = new ArrayList<>(Loft.circle(300, Loft.even(0, 2 * Math.PI, 73)));
    ring.set(72, ring.get(0));
    var contour = Loft.through(ring);
    assertThat(contour.runs()).hasSize(1);
    assertThat(contour.kind()).isEqualTo(SHRINK);
    assertThat(contour.radiusMm(40)).isCloseTo(300, within(1e-3));
  }
}
