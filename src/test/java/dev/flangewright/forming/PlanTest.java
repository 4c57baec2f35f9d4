package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How a flange is taken down: zones, trimming, passes, grain. */
class PlanTest {

  private static final Sheet SHEET = Sheet.of(1, 3);

  private static FlangeFigures figures(Contour contour) {
    return FlangeFigures.of(contour, SHEET, MetalValues.UNKNOWN, EdgeCondition.DEBURRED);
  }

  private static Contour shrink() {
    return Loft.through(Loft.circle(400, Loft.uneven(0, 1, 33)));
  }

  @Test
  void the_zones_add_up_to_the_flange() {
    for (var contour :
        List.of(shrink(), Loft.through(Loft.reversed(Loft.circle(300, Loft.even(0, 1.3, 40)))))) {
      var figures = figures(contour);
      for (double length : new double[] {7, 50, 133, 1000}) {
        var zones = DemandZone.of(figures, length);
        assertThat(zones.stream().mapToDouble(DemandZone::gatherMm).sum())
            .isCloseTo(figures.gatherMm(), withinPercentage(1e-6));
        assertThat(zones.get(zones.size() - 1).toMm())
            .isCloseTo(figures.contourLengthMm(), within(1e-9));
      }
    }
  }

  @Test
  void equal_zones_of_a_circle_have_equal_demand_and_only_shrinking_ruffles() {
    var zones = DemandZone.of(figures(shrink()), 50);
    assertThat(zones).hasSize(8);
    zones.forEach(
        zone -> {
          assertThat(zone.gatherMm()).isCloseTo(zones.get(0).gatherMm(), withinPercentage(1e-4));
          assertThat(zone.ruffleHeightMm()).isPositive();
        });
    var stretch = figures(Loft.through(Loft.reversed(Loft.circle(400, Loft.even(0, 1, 21)))));
    assertThat(DemandZone.of(stretch, 50)).allMatch(zone -> zone.ruffleHeightMm() == 0);
  }

  @Test
  void the_trim_curve_ends_at_the_figures_of_both_widths_and_rises_between() {
    var contour = shrink();
    double finished = Loft.WIDTH_MM - 6;
    var curve = TrimCurve.of(contour, SHEET, finished);
    var narrow = FlangeSection.of(FlangeKind.SHRINK, 400, SHEET, finished, 90).edgeStrain();
    assertThat(curve.finished().peakEdgeStrain()).isCloseTo(narrow, withinPercentage(1e-5));
    assertThat(curve.working().peakEdgeStrain())
        .isCloseTo(figures(contour).peakEdgeStrain(), withinPercentage(1e-9));
    for (int i = 1; i < curve.points().size(); i++) {
      assertThat(Math.abs(curve.points().get(i).peakEdgeStrain()))
          .isGreaterThan(Math.abs(curve.points().get(i - 1).peakEdgeStrain()));
    }
    assertThat(curve.savedStrain()).isPositive();
  }

  @Test
  void passes_share_the_strain_evenly_and_end_at_the_drawings_angle() {
    var figures = figures(Loft.through(Loft.circle(150, Loft.even(0, 1.5, 41))));
    var plan = FormingPlan.of(figures, SHEET, null);
    int count = plan.passes().size();
    assertThat(count).isEqualTo(figures.passes()).isGreaterThan(4);
    assertThat(plan.passes().get(count - 1).toAngleDeg()).isEqualTo(90);
    assertThat(plan.softenings()).isNull();
    for (var pass : plan.passes()) {
      double strain =
          FlangeSection.of(FlangeKind.SHRINK, 150, SHEET, Loft.WIDTH_MM, pass.toAngleDeg())
              .edgeStrain();
      assertThat(strain)
          .isCloseTo(figures.peakEdgeStrain() * pass.number() / count, withinPercentage(1e-3));
    }
    assertThat(plan.firstBlockAngleDeg()).isBetween(30.0, 80.0);
  }

  @Test
  void a_metal_that_hardens_soon_is_softened_between_passes_and_a_soft_one_is_not() {
    var figures = figures(Loft.through(Loft.circle(150, Loft.even(0, 1.5, 41))));
    double demand = Math.abs(figures.peakEdgeStrain());
    assertThat(FormingPlan.of(figures, SHEET, 10 * demand).softenings()).isZero();
    var hard = FormingPlan.of(figures, SHEET, demand / 2);
    // Each spell between softenings may hold at most 0.8 of half the demand: at least three spells.
    assertThat(hard.softenings()).isGreaterThanOrEqualTo(2);
    assertThat(hard.passes().get(0).softenFirst()).isFalse();
  }

  @Test
  void a_straight_flange_is_planned_in_one_turn() {
    var plan =
        FormingPlan.of(
            figures(Loft.through(List.of(new Point(0, 0), new Point(200, 0)))), SHEET, 0.1);
    assertThat(plan.passes()).hasSize(1);
    assertThat(plan.firstBlockAngleDeg()).isNull();
  }

  @Test
  void the_grain_runs_across_a_straight_bend() {
    var grain = Grain.across(List.of(List.of(new Point(0, 0), new Point(100, 0))));
    assertThat(grain.bestShare()).isZero();
    assertThat(grain.worstShare()).isEqualTo(1);
    assertThat(grain.bestDeg()).isEqualTo(90);
    assertThat(grain.worstDeg()).isZero();
    assertThat(Grain.shareAlong(List.of(List.of(new Point(0, 0), new Point(100, 0))), 90)).isZero();
  }

  @Test
  void a_full_ring_has_a_third_of_its_bend_along_any_grain() {
    // 60° of every 180° of heading lie within 30° of the grain.
    var ring = List.of(Loft.circle(100, Loft.even(0, 2 * Math.PI, 3601)));
    for (int degrees = 0; degrees < 180; degrees += 15) {
      assertThat(Grain.shareAlong(ring, degrees)).isCloseTo(1.0 / 3, within(1e-3));
    }
  }

  @Test
  void the_plan_is_made_for_the_hardest_station_wherever_it_stands() {
    // The tightest end of the ellipse is its last station.
    var figures = figures(Loft.through(Loft.ellipse(400, 250, Loft.even(-1.3, 0, 30))));
    var plan = FormingPlan.of(figures, SHEET, null);
    var last = plan.passes().get(plan.passes().size() - 1);
    assertThat(plan.peakStation()).isEqualTo(30);
    assertThat(last.strainSoFar()).isEqualTo(figures.peakEdgeStrain());
    double half = plan.passes().size() / 2.0;
    for (var pass : plan.passes()) {
      assertThat(pass.strainSoFar())
          .isCloseTo(figures.peakEdgeStrain() * pass.number() / (2 * half), within(1e-12));
    }
  }

  @Test
  void four_passes_are_made_on_one_set_of_blocks_and_five_on_two() {
    var four = figures(Loft.through(Loft.circle(500, Loft.even(0, 1, 21))));
    var five = figures(Loft.through(Loft.circle(400, Loft.even(0, 1, 21))));
    // About W/R of strain, one hundredth a pass.
    assertThat(four.passes()).isEqualTo(4);
    assertThat(five.passes()).isEqualTo(5);
    assertThat(FormingPlan.of(four, SHEET, null).firstBlockAngleDeg()).isNull();
    double angle = FormingPlan.of(five, SHEET, null).firstBlockAngleDeg();
    assertThat(FlangeSection.of(FlangeKind.SHRINK, 400, SHEET, 20, angle).edgeStrain())
        .isCloseTo(five.peakEdgeStrain() / 2, withinPercentage(1e-4));
  }

  @Test
  void a_metal_that_bears_one_pass_only_is_softened_before_every_other_one() {
    var figures = figures(Loft.through(Loft.circle(400, Loft.even(0, 1, 21))));
    double pass = Math.abs(figures.peakEdgeStrain()) / 5;
    // 0.8 of the uniform strain holds one pass and not two; one and a half; or not even one.
    for (double passes : new double[] {1.01, 1.99, 0.5}) {
      var plan = FormingPlan.of(figures, SHEET, passes * pass / 0.8);
      assertThat(plan.softenings()).isEqualTo(4);
      assertThat(plan.passes())
          .extracting(FormingPlan.Pass::softenFirst)
          .containsExactly(false, true, true, true, true);
    }
    assertThat(FormingPlan.of(figures, SHEET, 2.01 * pass / 0.8).passes())
        .extracting(FormingPlan.Pass::softenFirst)
        .containsExactly(false, false, true, false, true);
  }

  @Test
  void the_best_grain_stands_square_to_a_slanting_bend_and_the_worst_lies_along_it() {
    double slant = Math.toRadians(40);
    var line =
        List.of(List.of(new Point(5, 5), new Point(5 + Math.cos(slant), 5 + Math.sin(slant))));
    var grain = Grain.across(line);
    assertThat(grain.bestDeg()).isEqualTo(130);
    assertThat(grain.worstDeg()).isEqualTo(40);
    assertThat(grain.bestShare()).isZero();
    assertThat(grain.worstShare()).isEqualTo(1);
  }

  @Test
  void bends_of_two_directions_weigh_by_their_length() {
    var level = List.of(new Point(0, 0), new Point(300, 0));
    var upright = List.of(new Point(0, 0), new Point(0, 100));
    assertThat(Grain.shareAlong(List.of(level, upright), 10)).isEqualTo(0.75);
    assertThat(Grain.shareAlong(List.of(level, upright), 80)).isEqualTo(0.25);
    assertThat(Grain.shareAlong(List.of(level, upright), 45)).isZero();
    // From 31° to 59° and from 121° to 149° there is none along the grain; the former comes first.
    assertThat(Grain.across(List.of(level, upright)).bestDeg()).isEqualTo(45);
    // Exactly 30° still counts as along.
    assertThat(Grain.shareAlong(List.of(level), 30)).isEqualTo(1);
    assertThat(Grain.shareAlong(List.of(level), 30.01)).isZero();
    assertThat(Grain.shareAlong(List.of(), 30)).isZero();
  }

  @Test
  void on_a_taper_a_zone_is_read_between_the_stations_and_its_ruffle_where_it_is_hardest() {
    // A circle with stations at 0, 250 and 500 mm, 16, 21 and 26 mm wide: setback 4 mm.
    var points = Loft.circle(500, new double[] {0, 0.5, 1});
    var contour =
        Contour.of(
            List.of(
                new Station(1, points.get(0).xMm(), points.get(0).yMm(), 90, 16),
                new Station(2, points.get(1).xMm(), points.get(1).yMm(), 90, 21),
                new Station(3, points.get(2).xMm(), points.get(2).yMm(), 90, 26)));
    var zones = DemandZone.of(figures(contour), 200);
    assertThat(zones).extracting(DemandZone::number).containsExactly(1, 2, 3);
    assertThat(zones).extracting(DemandZone::fromMm).containsExactly(0.0, 200.0, 400.0);
    assertThat(zones.get(2).toMm()).isCloseTo(500, within(1e-6));
    double[] strain = new double[3];
    double[] gather = new double[3];
    for (int i = 0; i < 3; i++) {
      var section = FlangeSection.of(FlangeKind.SHRINK, 500, SHEET, 16 + 5 * i, 90);
      strain[i] = section.edgeStrain();
      // Per mm of mould line; the tangent line is shorter by 496 to 500.
      gather[i] = section.gatherMmPerMetre() / 1000 * 496 / 500;
    }
    // The wider end is the harder one: 200, 400 and 500 mm, flats of 12 + 10·s/500.
    double[] peak = {
      strain[0] + 0.8 * (strain[1] - strain[0]),
      strain[1] + 0.6 * (strain[2] - strain[1]),
      strain[2]
    };
    double[] flat = {16, 20, 22};
    double at200 = gather[0] + 0.8 * (gather[1] - gather[0]);
    double at400 = gather[1] + 0.6 * (gather[2] - gather[1]);
    double[] sums = {
      200 * (gather[0] + at200) / 2,
      50 * (at200 + gather[1]) / 2 + 150 * (gather[1] + at400) / 2,
      100 * (at400 + gather[2]) / 2
    };
    for (int i = 0; i < 3; i++) {
      assertThat(zones.get(i).peakEdgeStrain()).isCloseTo(peak[i], within(1e-9));
      assertThat(zones.get(i).gatherMm()).isCloseTo(sums[i], within(1e-6));
      assertThat(zones.get(i).rufflePitchMm()).isCloseTo(1.65 * flat[i], within(1e-6));
      double height = 2 * 1.65 * flat[i] / Math.PI * Math.sqrt(-peak[i]);
      assertThat(zones.get(i).ruffleHeightMm()).isCloseTo(height, within(1e-6));
    }
  }

  @Test
  void a_stretching_zone_has_no_ruffle_and_a_length_out_of_range_is_refused() {
    var stretch = figures(Loft.through(Loft.reversed(Loft.circle(400, Loft.even(0, 1, 21)))));
    assertThat(DemandZone.of(stretch, 50)).allMatch(zone -> zone.rufflePitchMm() == 0);
    assertThatThrownBy(() -> DemandZone.of(stretch, 4)).hasMessageContaining("zoneLengthMm");
  }

  @Test
  void trimming_spares_the_difference_and_a_station_keeps_what_is_narrower_than_the_trim() {
    var points = Loft.circle(400, new double[] {0, 0.2, 0.4});
    var contour =
        Contour.of(
            List.of(
                new Station(1, points.get(0).xMm(), points.get(0).yMm(), 90, 14),
                new Station(2, points.get(1).xMm(), points.get(1).yMm(), 90, 24),
                new Station(3, points.get(2).xMm(), points.get(2).yMm(), 90, 20)));
    var curve = TrimCurve.of(contour, SHEET, 18);
    double wide = FlangeSection.of(FlangeKind.SHRINK, 400, SHEET, 24, 90).edgeStrain();
    double narrow = FlangeSection.of(FlangeKind.SHRINK, 400, SHEET, 18, 90).edgeStrain();
    assertThat(curve.savedStrain()).isCloseTo(narrow - wide, within(1e-9));
    assertThat(curve.working().widthMm()).isEqualTo(24);
    assertThat(curve.finished().widthMm()).isEqualTo(18);
    assertThat(curve.points().get(6).widthMm()).isCloseTo(21, within(1e-12));
    // Wider than the flange there is nothing to trim.
    assertThat(TrimCurve.of(contour, SHEET, 30).savedStrain()).isZero();
    assertThat(TrimCurve.of(contour, SHEET, 30).finished().widthMm()).isEqualTo(24);
    assertThatThrownBy(() -> TrimCurve.of(contour, SHEET, 3)).hasMessageStartingWith("station 1: ");
    assertThatThrownBy(() -> TrimCurve.of(contour, SHEET, 0))
        .hasMessageStartingWith("flangeWidthMm is 0");
  }
}
