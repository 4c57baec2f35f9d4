package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A whole flange, summed from its stations. */
class FlangeFiguresTest {

  private static final Sheet SHEET = Sheet.of(1, 3);
  private static final MetalValues METAL =
      new MetalValues(18.0, 290.0, 440.0, 73_100.0, 2780.0, 2.5);

  private static FlangeFigures figures(List<Point> points) {
    return figures(points, METAL, EdgeCondition.DEBURRED);
  }

  private static FlangeFigures figures(List<Point> points, MetalValues metal, EdgeCondition edge) {
    return FlangeFigures.of(Loft.through(points), SHEET, metal, edge);
  }

  @Test
  void on_a_circle_the_sum_is_the_rate_times_the_tangent_line() {
    var points = Loft.circle(500, Loft.uneven(0, 1.2, 31));
    var section = FlangeSection.of(FlangeKind.SHRINK, 500, SHEET, Loft.WIDTH_MM, 90);
    var shrink = figures(points);
    double tangent = 1.2 * section.tangentRadiusMm();
    assertThat(shrink.contourLengthMm()).isCloseTo(600, within(1e-6));
    assertThat(shrink.tangentLengthMm()).isCloseTo(tangent, within(1e-6));
    assertThat(shrink.gatherMm())
        .isCloseTo(section.gatherMmPerMetre() * tangent / 1000, withinPercentage(1e-6));
    assertThat(shrink.peakEdgeStrain()).isCloseTo(section.edgeStrain(), withinPercentage(1e-6));
    assertThat(shrink.peakStation()).isEqualTo(1);
    assertThat(shrink.takeOutMm()).isEqualTo(shrink.gatherMm());
    assertThat(shrink.putInMm()).isZero();
  }

  @Test
  void a_stretch_flange_gains_and_its_tangent_line_is_longer_than_its_mould_line() {
    var stretch = figures(Loft.reversed(Loft.circle(500, Loft.even(0, 1.2, 31))));
    assertThat(stretch.gatherMm()).isNegative();
    assertThat(stretch.putInMm()).isEqualTo(-stretch.gatherMm());
    assertThat(stretch.tangentLengthMm()).isCloseTo(1.2 * 504, within(1e-6));
    assertThat(stretch.peakRuffleRatio()).isZero();
    assertThat(stretch.thinnestEdgeMm()).isLessThan(1);
  }

  @Test
  void the_gather_is_the_excess_of_the_blank_edge_over_the_formed_edge() {
    // A fact of geometry: on a circle both edges are arcs over the same angle.
    var points = Loft.circle(500, Loft.even(0, 1.2, 31));
    var section = FlangeSection.of(FlangeKind.SHRINK, 500, SHEET, Loft.WIDTH_MM, 90);
    double excess = 1.2 * (section.blankEdgeRadiusMm() - section.formedEdgeRadiusMm());
    assertThat(figures(points).gatherMm()).isCloseTo(excess, withinPercentage(1e-6));
  }

  @Test
  void a_plain_flange_has_nothing_to_gather() {
    var plain = figures(List.of(new Point(0, 0), new Point(400, 0)));
    assertThat(plain.kind()).isEqualTo(FlangeKind.PLAIN);
    assertThat(plain.gatherMm()).isZero();
    assertThat(plain.peakEdgeStrain()).isZero();
    assertThat(plain.peakSplitUtilisation()).isZero();
    assertThat(plain.passes()).isEqualTo(1);
    assertThat(plain.tangentLengthMm()).isEqualTo(400);
  }

  @Test
  void the_peak_is_where_the_contour_is_tightest() {
    // Tightest at the vertex of the long axis, the last station of this quarter ellipse.
    var points = Loft.ellipse(400, 250, Loft.even(-1.3, 0, 30));
    var flange = figures(points);
    assertThat(flange.peakStation()).isEqualTo(30);
    var expected = FlangeSection.of(FlangeKind.SHRINK, 250.0 * 250 / 400, SHEET, Loft.WIDTH_MM, 90);
    // Curvature at an end of an ellipse is good to 1 % (CurvatureTest), strain follows it.
    assertThat(flange.peakEdgeStrain()).isCloseTo(expected.edgeStrain(), withinPercentage(1.2));
  }

  @Test
  void a_reverse_curve_takes_out_here_and_puts_in_there() {
    var points = Loft.withCurvature(Loft.even(0, 800, 81), s -> Math.sin(s * Math.PI / 400) / 300);
    var flange = figures(points);
    assertThat(flange.kind()).isEqualTo(FlangeKind.MIXED);
    assertThat(flange.takeOutMm()).isPositive();
    assertThat(flange.putInMm()).isPositive();
    assertThat(flange.gatherMm()).isEqualTo(flange.takeOutMm() - flange.putInMm());
  }

  @Test
  void more_stations_change_the_sum_but_little() {
    var coarse = figures(Loft.ellipse(400, 250, Loft.even(0.1, 1.4, 25)));
    var fine = figures(Loft.ellipse(400, 250, Loft.even(0.1, 1.4, 200)));
    assertThat(coarse.gatherMm()).isCloseTo(fine.gatherMm(), withinPercentage(0.5));
  }

  @Test
  void the_other_hand_has_the_same_demand() {
    var points = Loft.ellipse(400, 250, Loft.uneven(0.1, 1.4, 33));
    var one = figures(points);
    var other = figures(Loft.mirrored(points));
    assertThat(other.gatherMm()).isCloseTo(one.gatherMm(), withinPercentage(1e-7));
    assertThat(other.peakEdgeStrain()).isCloseTo(one.peakEdgeStrain(), withinPercentage(1e-7));
    assertThat(other.peakStation()).isEqualTo(34 - one.peakStation());
  }

  @Test
  void an_edge_left_sheared_lowers_the_split_limit() {
    var points = Loft.reversed(Loft.circle(300, Loft.even(0, 1, 21)));
    double deburred = figures(points, METAL, EdgeCondition.DEBURRED).peakSplitUtilisation();
    double sheared = figures(points, METAL, EdgeCondition.SHEARED_WITH_BURR).peakSplitUtilisation();
    double factors = EdgeCondition.DEBURRED.factor() / EdgeCondition.SHEARED_WITH_BURR.factor();
    assertThat(sheared / deburred).isCloseTo(factors, within(1e-12));
    assertThat(sheared).isGreaterThan(deburred);
  }

  @Test
  void what_the_metal_does_not_tell_is_absent() {
    var points = Loft.reversed(Loft.circle(300, Loft.even(0, 1, 21)));
    var flange = figures(points, MetalValues.UNKNOWN, EdgeCondition.POLISHED);
    assertThat(flange.peakSplitUtilisation()).isNull();
    assertThat(flange.bendRadius()).isNull();
    assertThat(flange.blockRadiusMm()).isNull();
    assertThat(flange.stations()).allSatisfy(s -> assertThat(s.blockAngleDeg()).isNull());
    assertThat(flange.peakEdgeStrain()).isPositive();
  }

  @Test
  void angles_and_widths_that_follow_the_taper_are_taken_station_by_station() {
    var points = Loft.circle(500, Loft.even(0, 1, 3));
    var contour =
        Contour.of(
            List.of(
                new Station(1, points.get(0).xMm(), points.get(0).yMm(), 80, 18),
                new Station(2, points.get(1).xMm(), points.get(1).yMm(), 90, 20),
                new Station(3, points.get(2).xMm(), points.get(2).yMm(), 100, 25)));
    var flange = FlangeFigures.of(contour, SHEET, METAL, EdgeCondition.DEBURRED);
    for (int i = 0; i < 3; i++) {
      var s = contour.stations().get(i);
      var alone = FlangeSection.of(FlangeKind.SHRINK, 500, SHEET, s.widthMm(), s.bendAngleDeg());
      assertThat(flange.stations().get(i).blankBeyondTangentMm())
          .isCloseTo(alone.blankBeyondTangentMm(), within(1e-9));
    }
    assertThat(flange.peakStation()).isEqualTo(3);
  }

  @Test
  void a_station_shows_the_handbooks_setback_and_bend_allowance() {
    // FAA-H-8083-31, ch. 4: (0.01743 R + 0.0078 T) a degree, here with π/180 for 0.01743.
    var station = figures(List.of(new Point(0, 0), new Point(400, 0))).stations().get(0);
    assertThat(station.bendAllowanceMm())
        .isCloseTo(90 * (Math.PI / 180 * 3 + 0.0078 * 1), within(1e-12));
    assertThat(station.setbackMm()).isCloseTo(4, within(1e-12));
    assertThat(station.blankBeyondMouldLineMm())
        .isCloseTo(station.bendAllowanceMm() + 20 - 2 * 4, within(1e-12));
  }
}
