package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Area;

/** Flanges with pieces cut out, against circle sectors worked out by hand. */
class CutoutTest {

  private static final Sheet SHEET = Sheet.of(1, 3);
  private static final MetalValues METAL =
      new MetalValues(18.0, 290.0, 440.0, 73_100.0, 2780.0, 2.5);
  private static final double RADIUS = 500;
  private static final double ANGLE = 1.2;
  private static final double SETBACK = 4;

  private static FlangeFigures figures(Contour contour, Cutout... cutouts) {
    return FlangeFigures.of(contour, SHEET, METAL, EdgeCondition.DEBURRED, List.of(cutouts));
  }

  private static Contour shrink() {
    return Loft.through(Loft.circle(RADIUS, Loft.uneven(0, ANGLE, 61)));
  }

  private static FlangeSection section(double widthMm) {
    return FlangeSection.of(FlangeKind.SHRINK, RADIUS, SHEET, widthMm, 90);
  }

  /** On a circle both edges are arcs over the same angle: what to gather is their difference. */
  private static double excessMm(double widthMm, double arcMm) {
    var section = section(widthMm);
    return (section.blankEdgeRadiusMm() - section.formedEdgeRadiusMm()) * arcMm / RADIUS;
  }

  @Test
  void a_cutout_through_the_flange_leaves_the_demand_of_the_two_sectors_beside_it() {
    var cut = figures(shrink(), new Cutout(200, 263.7, null));
    assertThat(cut.gatherMm()).isCloseTo(excessMm(20, 600 - 63.7), withinPercentage(1e-4));
    assertThat(cut.takeOutMm()).isEqualTo(cut.gatherMm());
    assertThat(cut.formedLengthMm()).isCloseTo(600 - 63.7, within(1e-6));
    assertThat(cut.contourLengthMm()).isCloseTo(600, within(1e-6));
    assertThat(cut.tangentLengthMm()).isCloseTo(1.2 * (RADIUS - SETBACK), within(1e-6));
  }

  @Test
  void under_a_cutout_of_part_depth_the_flange_asks_for_what_its_width_asks_for() {
    var cut = figures(shrink(), new Cutout(200, 263.7, 9.0));
    double expected = excessMm(20, 600 - 63.7) + excessMm(9, 63.7);
    assertThat(cut.gatherMm()).isCloseTo(expected, withinPercentage(1e-4));
    assertThat(cut.formedLengthMm()).isCloseTo(600, within(1e-6));
  }

  @Test
  void cutouts_at_both_ends_and_in_any_order_are_each_left_out() {
    var contour = shrink();
    var cut = figures(contour, new Cutout(500, 600, null), new Cutout(0, 50, null));
    assertThat(cut.gatherMm()).isCloseTo(excessMm(20, 450), withinPercentage(1e-4));
    assertThat(cut.pieces()).hasSize(3);
    assertThat(cut.isCutAway(0)).isTrue();
    assertThat(cut.isCutAway(60)).isTrue();
    assertThat(cut.isCutAway(30)).isFalse();
  }

  @Test
  void a_cutout_over_the_tightest_stations_lowers_the_peak_and_one_elsewhere_does_not() {
    var points = Loft.ellipse(400, 250, Loft.even(-1.3, 1.3, 61));
    var contour = Loft.through(points);
    double whole = figures(contour).peakEdgeStrain();
    double middle = contour.lengthMm() / 2;
    var over = figures(contour, new Cutout(middle - 60, middle + 60, null));
    assertThat(over.peakEdgeStrain()).isGreaterThan(whole).isNegative();
    assertThat(over.isCutAway(over.peakStation() - 1)).isFalse();
    assertThat(figures(contour, new Cutout(0, 60, null)).peakEdgeStrain()).isEqualTo(whole);
  }

  @Test
  void no_relief_is_credited_at_the_ends_of_a_cutout() {
    var contour = shrink();
    var cut = figures(contour, new Cutout(205, 233, null));
    for (int i = 0; i < contour.stations().size(); i++) {
      if (!cut.isCutAway(i)) {
        assertThat(cut.stations().get(i)).isEqualTo(figures(contour).stations().get(i));
      }
    }
  }

  /** Property over random contours and cutouts, seeded. */
  @Test
  void a_cutout_never_increases_demand() {
    var random = new Random(7);
    for (int round = 0; round < 200; round++) {
      double wave = 200 + 300 * random.nextDouble();
      var contour =
          Loft.through(Loft.withCurvature(Loft.even(0, 500, 41), s -> Math.cos(s / 90) / wave));
      double from = 480 * random.nextDouble();
      double to = from + 1 + (498 - from) * random.nextDouble();
      Double left = random.nextBoolean() ? null : 4.5 + 15 * random.nextDouble();
      var whole = figures(contour);
      var cut = figures(contour, new Cutout(from, to, left));
      assertThat(cut.takeOutMm()).isBetween(0.0, whole.takeOutMm() + 1e-9);
      assertThat(cut.putInMm()).isBetween(0.0, whole.putInMm() + 1e-9);
      assertThat(Math.abs(cut.peakEdgeStrain()))
          .isLessThanOrEqualTo(Math.abs(whole.peakEdgeStrain()));
      assertThat(cut.passes()).isLessThanOrEqualTo(whole.passes());
      assertThat(cut.peakRuffleRatio()).isLessThanOrEqualTo(whole.peakRuffleRatio());
      assertThat(cut.peakSplitUtilisation()).isLessThanOrEqualTo(whole.peakSplitUtilisation());
      for (double length : new double[] {7, 50, 133}) {
        var zones = DemandZone.of(cut, length);
        assertThat(zones.stream().mapToDouble(DemandZone::gatherMm).sum())
            .isCloseTo(cut.gatherMm(), within(1e-9));
      }
    }
  }

  @Test
  void a_zone_that_is_cut_out_has_nothing_to_do() {
    var zones = DemandZone.of(figures(shrink(), new Cutout(90, 160, null)), 50);
    assertThat(zones.get(2).gatherMm()).isZero();
    assertThat(zones.get(2).peakEdgeStrain()).isZero();
    assertThat(zones.get(2).ruffleHeightMm()).isZero();
    assertThat(zones.get(1).gatherMm()).isCloseTo(excessMm(20, 40), withinPercentage(1e-3));
    assertThat(zones.get(3).gatherMm()).isCloseTo(excessMm(20, 40), withinPercentage(1e-3));
  }

  @Test
  void what_trimming_saves_is_told_of_the_metal_that_is_left() {
    var contour = Loft.through(Loft.ellipse(400, 250, Loft.even(-1.3, 1.3, 61)));
    double middle = contour.lengthMm() / 2;
    var cut = figures(contour, new Cutout(middle - 60, middle + 60, null));
    assertThat(TrimCurve.of(cut, SHEET, 14).working().peakEdgeStrain())
        .isCloseTo(cut.peakEdgeStrain(), withinPercentage(1e-9));
  }

  /**
   * The notch in a flat pattern of straight bends is a rectangle: the cut's length by the blank
   * beyond the line it reaches to.
   */
  @Test
  void the_cutout_is_a_notch_in_the_outline_and_breaks_the_bend_line() {
    var bottom = Loft.through(List.of(new Point(0, 0), new Point(300, 0)));
    var top = Loft.through(List.of(new Point(300, 100), new Point(0, 100)));
    double blank = StraightBend.of(SHEET, Loft.WIDTH_MM, 90).straightBlankMm();
    double narrow = StraightBend.of(SHEET, 9, 90).straightBlankMm();
    double uncut = 300 * (2 * blank + 100 - 2 * SETBACK);
    var through = develop(bottom, top, new Cutout(100, 140, null));
    assertThat(through.problem()).isNull();
    assertThat(through.areaMm2()).isCloseTo(uncut - 40 * blank, within(1e-6));
    assertThat(through.bendLines()).hasSize(3);
    assertThat(through.bendLines().get(0))
        .allSatisfy(p -> assertThat(p.yMm()).isCloseTo(SETBACK, within(1e-9)))
        .extracting(Point::xMm)
        .containsExactly(0.0, 100.0);
    assertThat(through.bendLines().get(1).get(0).xMm()).isCloseTo(140, within(1e-9));
    var part = develop(bottom, top, new Cutout(100, 140, 9.0));
    assertThat(part.areaMm2()).isCloseTo(uncut - 40 * (blank - narrow), within(1e-6));
    assertThat(part.bendLines()).hasSize(2);
    var web = develop(bottom, top, new Cutout(100, 140, -12.0));
    assertThat(web.areaMm2()).isCloseTo(uncut - 40 * (blank + 12 - SETBACK), within(1e-6));
    assertThat(Area.ofRingSigned(Shapes.ring(web.outline()))).isNegative();
  }

  private static PartDevelopment develop(Contour bottom, Contour top, Cutout cutout) {
    return PartDevelopment.of(List.of(bottom, top), List.of(figures(bottom, cutout), figures(top)));
  }

  @Test
  void a_notch_in_a_curved_flange_takes_the_ring_sector_between_blank_edge_and_bend_line() {
    var outer = Loft.through(Loft.circle(600, Loft.even(0, 1.1, 221)));
    var inner = Loft.through(Loft.reversed(Loft.circle(480, Loft.even(0, 1.1, 221))));
    var whole = PartDevelopment.of(List.of(outer, inner), List.of(figures(outer), figures(inner)));
    var cut =
        PartDevelopment.of(
            List.of(outer, inner),
            List.of(figures(outer, new Cutout(300, 360, null)), figures(inner)));
    double out = FlangeSection.of(FlangeKind.SHRINK, 600, SHEET, 20, 90).blankEdgeRadiusMm();
    double bend = 600 - SETBACK;
    double sector = (out * out - bend * bend) / 2 * (60.0 / 600);
    // Chords of 3 mm at 600 mm: 3²/(8·600) = 0.002 mm of 21 mm.
    assertThat(whole.areaMm2() - cut.areaMm2()).isCloseTo(sector, withinPercentage(0.02));
  }

  @Test
  void cutouts_that_cannot_be_made_are_refused_with_the_reason() {
    assertThatThrownBy(() -> new Cutout(100, 100, null))
        .hasMessage("cutToMm is 100; it must be above 100");
    Stream.of(
            List.of(List.of(new Cutout(10, 60, null), new Cutout(50, 90, null)), "overlap"),
            List.of(List.of(new Cutout(10, 700, null)), "cutToMm is 700; it must be from 0 to 600"),
            List.of(List.of(new Cutout(650, 700, null)), "cutToMm"),
            List.of(List.of(new Cutout(10, 60, 2.0)), "would end in the bend"),
            List.of(List.of(new Cutout(10, 60, -2.0)), "would end in the bend"),
            List.of(List.of(new Cutout(0, 600, null)), "nothing of the flange"))
        .forEach(
            refused -> {
              @SuppressWarnings("unchecked")
              var cutouts = new ArrayList<>((List<Cutout>) refused.get(0));
              assertThatThrownBy(
                      () ->
                          FlangeFigures.of(shrink(), SHEET, METAL, EdgeCondition.DEBURRED, cutouts))
                  .isInstanceOf(FormingException.class)
                  .hasMessageContaining((String) refused.get(1));
            });
  }

  @Test
  void ends_written_rounded_leave_no_sliver_of_flange() {
    assertThat(figures(shrink(), new Cutout(550, 600.4, null)).formedLengthMm())
        .isCloseTo(550, within(1e-6));
    var touching = figures(shrink(), new Cutout(0.4, 100, null), new Cutout(100.4, 599.5, 12.0));
    assertThat(touching.pieces()).hasSize(2);
    assertThat(touching.formedLengthMm()).isCloseTo(500, within(1e-6));
  }
}
