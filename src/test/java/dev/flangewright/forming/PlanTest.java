package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
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
}
