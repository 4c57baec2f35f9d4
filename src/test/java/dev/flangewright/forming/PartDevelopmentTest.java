package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The flat outline, against shapes whose area is known. */
class PartDevelopmentTest {

  private static final Sheet SHEET = Sheet.of(1, 3);

  private static PartDevelopment develop(Contour... flanges) {
    var figures =
        Arrays.stream(flanges)
            .map(f -> FlangeFigures.of(f, SHEET, MetalValues.UNKNOWN, EdgeCondition.DEBURRED))
            .toList();
    return PartDevelopment.of(List.of(flanges), figures);
  }

  private static Contour straight(double x1, double y1, double x2, double y2) {
    return Loft.through(List.of(new Point(x1, y1), new Point(x2, y2)));
  }

  @Test
  void a_channel_is_a_rectangle_as_wide_as_the_straight_bends_say() {
    var bottom = straight(0, 0, 300, 0);
    var top = straight(300, 100, 0, 100);
    var part = develop(bottom, top);
    double blank = StraightBend.of(SHEET, Loft.WIDTH_MM, 90).straightBlankMm();
    double width = 2 * blank + 100 - 2 * 4;
    assertThat(part.problem()).isNull();
    assertThat(part.closedByChord()).isFalse();
    assertThat(part.outline()).hasSize(4);
    assertThat(part.areaMm2()).isCloseTo(300 * width, within(1e-6));
    assertThat(part.bounds().widthMm()).isCloseTo(300, within(1e-9));
    assertThat(part.bounds().heightMm()).isCloseTo(width, within(1e-9));
    assertThat(part.bendLines().get(0).get(0).yMm()).isCloseTo(4, within(1e-9));
    assertThat(part.bendLines().get(1).get(0).yMm()).isCloseTo(96, within(1e-9));
  }

  @Test
  void a_frame_segment_is_a_ring_sector_between_the_two_blank_radii() {
    double angle = 1.1;
    int count = 111;
    var outer = Loft.through(Loft.circle(600, Loft.even(0, angle, count)));
    var inner = Loft.through(Loft.reversed(Loft.circle(480, Loft.even(0, angle, count))));
    var part = develop(outer, inner);
    double out = FlangeSection.of(FlangeKind.SHRINK, 600, SHEET, 20, 90).blankEdgeRadiusMm();
    double in = FlangeSection.of(FlangeKind.STRETCH, 480, SHEET, 20, 90).blankEdgeRadiusMm();
    assertThat(part.problem()).isNull();
    // A polygon with steps of 0.01 rad is short of the arc by 0.01²/6 = 1.7e-5 of its area.
    double area = (out * out - in * in) * angle / 2;
    assertThat(part.areaMm2()).isCloseTo(area, withinPercentage(0.003));
    // 2780 kg/m³ × 1 mm × area
    assertThat(part.massKg(2780.0, 1))
        .isCloseTo(2780 * 0.001 * area * 1e-6, withinPercentage(0.003));
    assertThat(part.massKg(null, 1)).isNull();
  }

  @Test
  void the_bend_line_of_a_shrink_flange_is_its_mould_line_moved_in_by_the_setback() {
    var part = develop(Loft.through(Loft.circle(600, Loft.uneven(0, 1, 40))));
    assertThat(part.bendLines().get(0))
        .allSatisfy(p -> assertThat(Math.hypot(p.xMm(), p.yMm())).isCloseTo(596, within(1e-6)));
  }

  @Test
  void the_order_in_which_flanges_are_given_does_not_change_the_blank() {
    var south = straight(0, 0, 300, 0);
    var east = straight(310, 10, 310, 90);
    var north = straight(300, 100, 0, 100);
    double area = develop(south, east, north).areaMm2();
    assertThat(develop(south, north, east).areaMm2()).isCloseTo(area, within(1e-6));
    assertThat(develop(north, south, east).areaMm2()).isCloseTo(area, within(1e-6));
  }

  @Test
  void a_single_shrink_flange_is_closed_by_its_chord_and_says_so() {
    var part = develop(Loft.through(Loft.circle(600, Loft.even(0, 1, 50))));
    assertThat(part.closedByChord()).isTrue();
    assertThat(part.problem()).isNull();
    assertThat(part.areaMm2()).isPositive();
  }

  @Test
  void a_single_stretch_flange_cannot_be_closed_by_its_chord() {
    var part = develop(Loft.through(Loft.reversed(Loft.circle(600, Loft.even(0, 1, 50)))));
    assertThat(part.areaMm2()).isNull();
    assertThat(part.massKg(2780.0, 1)).isNull();
    assertThat(part.problem()).contains("clockwise").contains("other flanges");
  }

  @Test
  void a_single_straight_flange_encloses_nothing() {
    var part = develop(straight(0, 0, 300, 0));
    assertThat(part.areaMm2()).isNull();
    assertThat(part.problem()).contains("does not enclose");
    assertThat(part.bounds().widthMm()).isCloseTo(300, within(1e-9));
  }

  @Test
  void blanks_that_run_into_each_other_are_reported_in_plain_words() {
    var first = straight(0, 0, 300, 0);
    var crossing = straight(300, 100, 0, -120);
    var part = develop(first, crossing);
    assertThat(part.problem()).startsWith("The developed outline crosses or touches itself near x");
    assertThat(part.areaMm2()).isNull();
  }

  @Test
  void both_hands_need_the_same_blank() {
    var outer = Loft.ellipse(600, 450, Loft.uneven(0, 1.2, 40));
    var inner = Loft.reversed(Loft.ellipse(500, 360, Loft.uneven(0, 1.2, 40)));
    var one = develop(Loft.through(outer), Loft.through(inner));
    var other = develop(Loft.through(Loft.mirrored(outer)), Loft.through(Loft.mirrored(inner)));
    assertThat(other.areaMm2()).isCloseTo(one.areaMm2(), within(1e-4));
    var corners = new ArrayList<>(one.outline());
    assertThat(other.outline()).hasSameSizeAs(corners);
    assertThat(other.bounds().maxXMm()).isCloseTo(-one.bounds().minXMm(), within(1e-6));
  }

  @Test
  void three_stations_of_a_circle_are_a_triangle_of_its_blank_radius() {
    var part = develop(Loft.through(Loft.circle(600, new double[] {-0.5, 0, 0.5})));
    double r = FlangeSection.of(FlangeKind.SHRINK, 600, SHEET, 20, 90).blankEdgeRadiusMm();
    assertThat(part.outline()).hasSize(3);
    assertThat(part.problem()).isNull();
    // Two triangles of 0.5 rad at the centre less one of 1 rad.
    double area = r * r * (Math.sin(0.5) - Math.sin(1) / 2);
    assertThat(part.areaMm2()).isCloseTo(area, withinPercentage(1e-6));
    assertThat(part.bounds().widthMm()).isCloseTo(r * (1 - Math.cos(0.5)), within(1e-6));
    assertThat(part.bounds().heightMm()).isCloseTo(2 * r * Math.sin(0.5), within(1e-6));
    assertThat(part.massKg(2700.0, 2)).isCloseTo(2700 * 2 * area * 1e-9, withinPercentage(1e-6));
  }
}
