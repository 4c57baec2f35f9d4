package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The blank to cut, against offsets and rectangles that are known from geometry. */
class CutBlankTest {

  private static List<Point> regular(int corners, double radius) {
    return IntStream.range(0, corners)
        .mapToObj(i -> 2 * Math.PI * i / corners)
        .map(a -> new Point(radius * Math.cos(a), radius * Math.sin(a)))
        .toList();
  }

  private static List<Point> turned(List<Point> points, double deg) {
    double c = Math.cos(Math.toRadians(deg));
    double s = Math.sin(Math.toRadians(deg));
    return points.stream()
        .map(p -> new Point(c * p.xMm() - s * p.yMm(), s * p.xMm() + c * p.yMm()))
        .toList();
  }

  private static List<Point> rectangle(double length, double breadth) {
    return List.of(
        new Point(0, 0), new Point(length, 0), new Point(length, breadth), new Point(0, breadth));
  }

  private static double perimeter(List<Point> corners) {
    return IntStream.range(0, corners.size())
        .mapToDouble(i -> corners.get(i).distanceMm(corners.get((i + 1) % corners.size())))
        .sum();
  }

  /**
   * Area of a convex polygon moved out by d with mitred corners: A + P·d + d²·Σ tan(τ/2), τ the
   * turn at a corner (Steiner's formula with the kites at the corners in place of circle sectors).
   */
  @Test
  void a_convex_outline_grows_by_its_perimeter_and_the_kites_at_its_corners() {
    for (int corners : new int[] {4, 5, 6, 12, 40}) {
      var outline = regular(corners, 150);
      double area = 150 * 150 * corners * Math.sin(2 * Math.PI / corners) / 2;
      for (double d : new double[] {0, 0.5, 6, 25}) {
        double kites = corners * Math.tan(Math.PI / corners) * d * d;
        assertThat(CutBlank.of(outline, d, 0).areaMm2())
            .as("%d corners, %s mm", corners, d)
            .isCloseTo(area + perimeter(outline) * d + kites, within(1e-6 * area));
      }
    }
  }

  @Test
  void a_sharp_corner_is_cut_off_before_it_grows_long() {
    var spike = List.of(new Point(0, -5), new Point(200, 0), new Point(0, 5));
    var cut = CutBlank.of(spike, 6, 0);
    double reach = cut.line().stream().mapToDouble(Point::xMm).max().orElseThrow();
    // A full mitre would stand 6/sin(1.43°) = 240 mm off the corner.
    assertThat(reach).isBetween(206.0, 200 + CutBlank.MITRE_LIMIT * 6 + 1e-6);
  }

  @Test
  void without_an_allowance_the_line_to_cut_is_the_outline() {
    var outline = rectangle(300, 120);
    var cut = CutBlank.of(outline, 0, 100);
    assertThat(cut.line()).isEqualTo(outline);
    assertThat(cut.areaMm2()).isCloseTo(300 * 120 - 100, within(1e-9));
  }

  @Test
  void a_notch_narrower_than_two_allowances_keeps_its_metal() {
    var notched =
        List.of(
            new Point(0, 0),
            new Point(300, 0),
            new Point(300, 100),
            new Point(155, 100),
            new Point(155, 60),
            new Point(145, 60),
            new Point(145, 100),
            new Point(0, 100));
    assertThat(CutBlank.of(notched, 6, 0).areaMm2()).isCloseTo(312 * 112, within(1e-6));
    // 3 mm leave a notch of 4 mm, its bottom 3 mm higher, as deep to the outer line as before.
    assertThat(CutBlank.of(notched, 3, 0).areaMm2()).isCloseTo(306 * 106 - 4 * 40, within(1e-6));
  }

  @Test
  void the_smallest_rectangle_turns_with_the_blank() {
    for (int deg = 0; deg < 180; deg += 15) {
      var found = CutBlank.of(turned(rectangle(300, 120), deg), 0, 0).rectangle();
      assertThat(found.lengthMm()).isCloseTo(300, within(1e-6));
      assertThat(found.breadthMm()).isCloseTo(120, within(1e-6));
      assertThat(Math.abs(Math.IEEEremainder(found.angleDeg() - deg, 180))).isLessThan(1e-6);
      assertThat(found.angleDeg()).isBetween(0.0, 180.0).isNotEqualTo(180);
      assertThat(found.corners()).hasSize(4);
    }
  }

  /** Against the plain search: a box round the outline turned by every tenth of a degree. */
  @Test
  void no_other_angle_gives_a_smaller_rectangle() {
    var outline =
        List.of(
            new Point(0, 0),
            new Point(220, 40),
            new Point(310, 150),
            new Point(120, 190),
            new Point(20, 90));
    var found = CutBlank.of(outline, 6, 0);
    double least =
        IntStream.range(0, 1800)
            .mapToDouble(tenth -> box(turned(found.line(), tenth / 10.0)))
            .min()
            .orElseThrow();
    double area = found.rectangle().lengthMm() * found.rectangle().breadthMm();
    assertThat(area).isLessThanOrEqualTo(least * (1 + 1e-9));
    // A tenth of a degree off costs at most (l² + b²)·0.0017/2 of the area: under half a per cent.
    assertThat(area).isGreaterThan(least * 0.995);
  }

  private static double box(List<Point> points) {
    var xs = points.stream().mapToDouble(Point::xMm).summaryStatistics();
    var ys = points.stream().mapToDouble(Point::yMm).summaryStatistics();
    return (xs.getMax() - xs.getMin()) * (ys.getMax() - ys.getMin());
  }

  @Test
  void an_allowance_out_of_range_is_refused() {
    assertThatThrownBy(() -> CutBlank.of(rectangle(300, 120), 101, 0))
        .hasMessageContaining("trimAllowanceMm is 101");
    assertThatThrownBy(() -> CutBlank.of(rectangle(300, 120), -1, 0))
        .hasMessageContaining("trimAllowanceMm is -1");
  }
}
