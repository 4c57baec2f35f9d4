package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Contours from path data: W3C SVG 2, section 9.3 (commands, grammar) and appendix B.2 (arcs). */
class SvgPathTest {

  private static List<Station> stations(String path, double spacing) {
    return SvgPath.of(path).stations(spacing, 90, 20);
  }

  private static Point end(String path) {
    var stations = stations(path, 10_000);
    return stations.get(stations.size() - 1).point();
  }

  private static SvgPathException refusal(String path) {
    var refusal = catchThrowableOfType(SvgPathException.class, () -> SvgPath.of(path));
    assertThat(refusal).as(path).isNotNull();
    return refusal;
  }

  @Test
  void a_path_drawn_downwards_runs_down_the_frame() {
    var stations = stations("M 10 20 L 10 120", 50);
    assertThat(stations)
        .containsExactly(
            new Station(1, 10, -20, 90, 20),
            new Station(2, 10, -70, 90, 20),
            new Station(3, 10, -120, 90, 20));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // Section 9.3.9: white space and commas may be left out, a second full stop or a sign
        // begins the next number; section 9.3.3: pairs after a move are lines.
        "M10 20L30 40 | 30 | -40",
        "M10,20 30,40 | 30 | -40",
        "m10 20 20 20 | 30 | -40",
        "M.5.5L30-40 | 30 | 40",
        "M1e1 2E+1L300e-1,.4e2 | 30 | -40",
        "M10 20l20 20 | 30 | -40",
        "M10 20H30V40 | 30 | -40",
        "M10 20h10 10v20 | 30 | -40",
        "M+10+20L+30+40 | 30 | -40",
        "M10 20C10 30 20 40 30 40 | 30 | -40",
        "M10 20c0 10 10 20 20 20 | 30 | -40",
        "M10 20Q10 40 30 40 | 30 | -40",
        "M10 20q0 20 20 20 | 30 | -40",
        "M10 20T30 40 | 30 | -40",
        "M10 20S20 40 30 40 | 30 | -40",
        "M10 20A20 20 0 0 1 30 40 | 30 | -40",
        "M10 20a20,20 0 0120 20 | 30 | -40",
        "M10 20a20 20 0 1030,40 | 40 | -60",
        "M10 20L30 20 30 40Z | 10 | -20",
      })
  void every_command_and_compact_form_leads_where_it_should(String path, double x, double y) {
    assertThat(end(path).distanceMm(new Point(x, y))).isLessThan(1e-9);
  }

  @Test
  void every_kind_of_white_space_separates() {
    assertThat(end("\t\n\r\f M10 20\t\n\r\fL 30 , 40\n")).isEqualTo(new Point(30, -40));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "M-500 0A500 500 0 0 1 500 0",
        "M-500 0a500 500 0 0 1 500-500 500 500 0 0 1 500 500",
        // B.2.5: radii too small to reach are scaled up until they do.
        "M-500 0A1 1 0 0 1 500 0",
        // 9.5.1: the sign of a radius is dropped.
        "M-500 0A-500-500 0 0 1 500 0",
        // A circle looks the same turned.
        "M-500 0A500 500 77 0 1 500 0",
      })
  void a_half_circle_of_arcs_has_its_radius_exactly(String path) {
    var points = stations(path, 15).stream().map(Station::point).toList();
    assertThat(points)
        .allSatisfy(p -> assertThat(Math.hypot(p.xMm(), p.yMm())).isCloseTo(500, within(1e-9)));
    // Over the top and to the right: y up, sweep flag 1 runs clockwise as seen, so the web on the
    // left lies outside and the edge stretches.
    assertThat(points.get(points.size() / 2).yMm()).isGreaterThan(490);
    var contour = Contour.of(stations(path, 15));
    assertThat(contour.kind()).isEqualTo(FlangeKind.STRETCH);
    assertThat(contour.radiusMm(30)).isCloseTo(500, withinPercentage(1e-6));
    assertThat(SvgPath.of(path).lengthMm()).isCloseTo(500 * Math.PI, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    // Centre of the circle of radius 100 from (0,0) to (100,100): (100,0) or (0,100), y down.
    "0, 0, 100, 0, 90",
    "0, 1, 0, 100, 90",
    "1, 0, 0, 100, 270",
    "1, 1, 100, 0, 270",
  })
  void the_two_flags_choose_one_of_four_arcs(
      int large, int sweep, double cx, double cy, double deg) {
    String path = "M0 0A100 100 0 " + large + " " + sweep + " 100 100";
    assertThat(SvgPath.of(path).lengthMm()).isCloseTo(Math.toRadians(deg) * 100, within(1e-9));
    var centre = new Point(cx, -cy);
    assertThat(stations(path, 10))
        .allSatisfy(s -> assertThat(s.point().distanceMm(centre)).isCloseTo(100, within(1e-9)));
  }

  @Test
  void a_turned_ellipse_keeps_its_equation() {
    // Half an ellipse of 300 by 200 turned by 30°, from one end of its long axis to the other.
    double c = 300 * Math.cos(Math.PI / 6);
    double s = 300 * Math.sin(Math.PI / 6);
    String path = "M" + -c + "," + -s + "A300 200 30 0 1 " + c + "," + s;
    assertThat(stations(path, 10))
        .allSatisfy(
            station -> {
              double x = station.xMm();
              double y = -station.yMm();
              double along = x * Math.cos(Math.PI / 6) + y * Math.sin(Math.PI / 6);
              double across = -x * Math.sin(Math.PI / 6) + y * Math.cos(Math.PI / 6);
              assertThat(Math.hypot(along / 300, across / 200)).isCloseTo(1, within(1e-9));
            });
  }

  @Test
  void the_usual_cubic_quarter_circle_is_off_by_27_parts_in_100_000() {
    // Control points at 4/3·(√2 − 1) of the radius: radial error from 0 to 0.0273 %
    // (Goldapp, Computer Aided Geometric Design 8 (1991) 227–238, from memory; recomputed).
    double k = 4.0 / 3 * (Math.sqrt(2) - 1) * 1000;
    String path = "M1000 0C1000 " + k + " " + k + " 1000 0 1000";
    var radii = stations(path, 1).stream().mapToDouble(p -> Math.hypot(p.xMm(), p.yMm()));
    var errors = radii.map(r -> r / 1000 - 1).summaryStatistics();
    assertThat(errors.getMin()).isCloseTo(0, within(1e-9));
    assertThat(errors.getMax()).isCloseTo(2.7253e-4, within(1e-7));
  }

  @Test
  void a_quadratic_is_a_parabola_with_its_length() {
    // y = x²/400 over 0 to 200: length by the closed form of the parabola's arc.
    var path = SvgPath.of("M0 0Q100 0 200 100");
    double length = 100 * (Math.sqrt(2) + Math.log(1 + Math.sqrt(2)));
    assertThat(path.lengthMm()).isCloseTo(length, within(1e-9));
    assertThat(path.stations(5, 90, 20))
        .allSatisfy(s -> assertThat(-s.yMm()).isCloseTo(s.xMm() * s.xMm() / 400, within(1e-9)));
  }

  @Test
  void smooth_commands_reflect_the_control_point_before_them() {
    String written = "M0 0C0 50 50 100 100 100C150 100 200 50 200 0";
    assertThat(stations("M0 0C0 50 50 100 100 100S200 50 200 0", 10))
        .isEqualTo(stations(written, 10));
    assertThat(stations("M0 0Q50 100 100 0T200 0", 10))
        .isEqualTo(stations("M0 0Q50 100 100 0Q150-100 200 0", 10));
    // After another command there is nothing to reflect.
    assertThat(stations("M0 0L10 0S100 50 100 100", 10))
        .isEqualTo(stations("M0 0L10 0C10 0 100 50 100 100", 10));
  }

  @Test
  void stations_are_evenly_spaced_and_stand_on_every_corner() {
    var stations = stations("M0 0L100 0L100-70A50 50 0 0 0 50-120", 15);
    assertThat(stations).extracting(Station::point).contains(new Point(100, 0));
    for (int i = 1; i < stations.size(); i++) {
      double apart = stations.get(i - 1).point().distanceMm(stations.get(i).point());
      assertThat(apart).isBetween(13.0, 15.0);
    }
  }

  @Test
  void a_zero_radius_is_a_line_and_an_arc_to_where_it_starts_is_nothing() {
    assertThat(SvgPath.of("M0 0A0 50 0 0 1 30 40").lengthMm()).isCloseTo(50, within(1e-12));
    assertThat(SvgPath.of("M0 0A50 50 0 1 1 0 0L30 40").lengthMm()).isCloseTo(50, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | 1 | command letter",
        "L 1 2 | 1 | begins with M",
        "M 1 | 4 | number is expected, not the end",
        "M 1 2 | 6 | no length",
        "M 1 2 L 3 | 10 | number is expected",
        "M 1 2 L 3 x | 11 | not “x”",
        "M 1 2 L 3 4, | 13 | number is expected",
        "M 1 2 L ,3 4 | 9 | number is expected",
        "M 1 2 B 3 4 | 7 | command letter",
        "M 1 2 L 3 4 M 5 6 L 7 8 | 13 | one line",
        "M 1 2 L 3 4 L 9 1 z L 7 8 | 21 | one line",
        "M 1 2 A 5 5 0 2 0 9 9 | 15 | 0 or 1 is expected",
        "M 1 2 L 1e999 0 | 9 | too large",
        "M 1 2 L 200000 0 | 9 | within 100 m",
      })
  void what_cannot_be_read_is_refused_with_its_place(String path, int position, String says) {
    var refusal = refusal(path);
    assertThat(refusal.position()).isEqualTo(position);
    assertThat(refusal).hasMessageContaining("character " + position).hasMessageContaining(says);
  }

  @Test
  void too_long_a_text_too_many_stations_and_a_spacing_out_of_range_are_refused() {
    assertThat(refusal("M0 0" + " 1 1".repeat(30_000))).hasMessageContaining("longer than 100000");
    var path = SvgPath.of("M0 0L1000 0");
    assertThat(path.stations(0.6, 90, 20)).hasSize(1668);
    assertThat(catchThrowableOfType(FormingException.class, () -> path.stations(0.4, 90, 20)))
        .hasMessage("stations is 2501; it must be from 2 to 2000");
    assertThat(catchThrowableOfType(FormingException.class, () -> path.stations(0, 90, 20)).field())
        .isEqualTo("spacingMm");
  }

  @Tag("trials")
  @Test
  void whatever_is_typed_it_is_read_or_refused_by_name() {
    var random = new Random(17);
    String letters = "MmLlHhVvCcSsQqTtAaZz0123456789.,-+eE  \n%xµ";
    int read = 0;
    for (int i = 0; i < 20_000; i++) {
      var text = new StringBuilder(random.nextInt(4) == 0 ? "" : "M0 0");
      int length = random.nextInt(40);
      for (int k = 0; k < length; k++) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      try {
        var path = SvgPath.of(text.toString());
        assertThat(path.lengthMm()).as(text.toString()).isFinite();
        path.stations(Math.max(0.1, path.lengthMm() / 50), 90, 20);
        read++;
      } catch (SvgPathException | FormingException refusal) {
        assertThat(refusal.getMessage()).isNotBlank();
      }
    }
    assertThat(read).isGreaterThan(20);
  }

  @Tag("trials")
  @Test
  void the_longest_text_is_read_without_delay_of_its_own() {
    var path = SvgPath.of("M0 0" + "h1".repeat(49_900));
    assertThat(path.stations(100, 90, 20)).hasSize(500);
    refusal("M0 0L" + "1".repeat(99_000));
    refusal("M" + "-".repeat(99_000));
  }

  private static double quarterOfEllipse(double a, double b) {
    return a * LegendreEllipticIntegral.bigE(1 - b * b / (a * a));
  }

  @Test
  void half_an_ellipse_is_as_long_as_the_complete_elliptic_integral_says() {
    double half = 2 * quarterOfEllipse(200, 100);
    assertThat(SvgPath.of("M-200 0A200 100 0 0 1 200 0").lengthMm()).isCloseTo(half, within(1e-6));
    // Radii in the right proportion but too small are scaled up (B.2.5).
    assertThat(SvgPath.of("M-200 0A2 1 0 0 0 200 0").lengthMm()).isCloseTo(half, within(1e-6));
    assertThat(SvgPath.of("M0-200A2 1 90 0 0 0 200").lengthMm()).isCloseTo(half, within(1e-6));
  }

  @Test
  void stations_on_a_parabola_are_evenly_spaced_along_its_arc() {
    // y = x²/400: s = x/2·√(1 + (x/200)²) + 100·asinh(x/200), the closed form of its arc.
    var stations = stations("M0 0Q100 0 200 100", 23);
    double length = 100 * (Math.sqrt(2) + Math.log(1 + Math.sqrt(2)));
    assertThat(stations).hasSize(11);
    for (int i = 0; i <= 10; i++) {
      double u = stations.get(i).xMm() / 200;
      double asinh = Math.log(u + Math.hypot(u, 1));
      assertThat(100 * (u * Math.hypot(u, 1) + asinh)).isCloseTo(length * i / 10, within(1e-8));
    }
  }

  @Test
  void stations_on_a_curve_of_very_uneven_speed_are_evenly_spaced() {
    // The control points of a straight line far from its thirds; and a curve that starts and ends
    // at rest, whose ends are met exactly.
    for (String path : List.of("M0 0C5 0 10 0 300 0", "M0 0C0 0 300 0 300 0")) {
      var stations = stations(path, 10);
      assertThat(stations).hasSize(31);
      for (int i = 0; i <= 30; i++) {
        assertThat(stations.get(i).xMm()).isCloseTo(10 * i, within(1e-6));
      }
      assertThat(stations.get(30).xMm()).isEqualTo(300);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // A straight line in two parts, slanting, is one line.
        "M0 0L50 50L100 100 | 2",
        // Arcs that meet their lines without a corner: up, round to the right, and on.
        "M-100 50L-100 0A100 100 0 0 1 0-100L50-100 | 2",
        "M50-100L0-100A100 100 0 0 0-100 0L-100 50 | 2",
        // Control points on the start or the end: the direction is that to the next one.
        "M-50-50L0 0C0 0 50 50 100 50 | 2",
        "M0-50C50 50 100 100 100 100L200 200 | 2",
        "M0 0C0 0 100 0 100 0L200 0 | 2",
        // More than half a degree is a corner: atan 0.7/100 = 0.40°, atan 1.05/100 = 0.60°.
        "M0 0L100 0L200 0.7 | 2",
        "M0 0L100 0L200-0.7 | 2",
        "M0 0L100 0L200 1.05 | 3",
        "M0 0L100 0L200-1.05 | 3",
        // Through the x axis the other way round, where headings jump by a whole turn.
        "M0 0L-100 0.2L-200 0 | 2",
        "M0 0L-100 5L-200 0 | 3",
        // A line to where it starts is nothing.
        "M0 0L0 0L30 40L30 40 | 2",
        "M0 0h0v0L30 40 | 2",
      })
  void a_joint_is_a_corner_above_half_a_degree(String path, int count) {
    assertThat(stations(path, 10_000)).hasSize(count);
  }

  @Test
  void a_run_of_several_parts_is_spaced_as_one() {
    // Three quarters of a circle of 500 mm in three arcs, in ten gaps of 27°.
    String path = "M0 500a500 500 0 0 1-500-500 500 500 0 0 1 500-500 500 500 0 0 1 500 500";
    var stations = stations(path, 240);
    assertThat(stations).hasSize(11);
    for (int i = 0; i <= 10; i++) {
      double angle = Math.toRadians(-90 - 27 * i);
      var expected = new Point(500 * Math.cos(angle), 500 * Math.sin(angle));
      assertThat(stations.get(i).point().distanceMm(expected)).isLessThan(1e-6);
      assertThat(stations.get(i).number()).isEqualTo(i + 1);
    }
    // Lines in one direction: 150 mm in two gaps, and a length that is whole is not cut finer.
    assertThat(stations("M0 0L100 0L150 0", 100).get(1).xMm()).isCloseTo(75, within(1e-12));
    assertThat(stations("M0 0L100 0L150 0", 50)).hasSize(4);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'  L 1 2' | 3 | begins with M",
        "'M 0 0 L 0 0' | 12 | no length",
        "'M 1 2 A 5 5 0 ' | 15 | 0 or 1 is expected, not the end",
        "'M 1 2 A 5 5 0 1' | 16 | 0 or 1 is expected, not the end",
        "'M 1 2 L 3 4  , x' | 16 | number is expected, not “x”",
        "'M 1 2 L 3 4  x' | 14 | command letter is expected, not “x”",
        "'M 1 2 L 100001 0' | 9 | within 100 m",
        "'M 1 2 L 0 -100001' | 11 | within 100 m",
        "'M 0 0 A 1e10 1e10 0 0 0 1 1' | 24 | too large or too small",
        "'M 0 0 A 5 1e-10 0 0 0 1 1' | 22 | too large or too small",
      })
  void what_cannot_be_drawn_is_refused_with_its_place(String path, int position, String says) {
    var refusal = refusal(path);
    assertThat(refusal.position()).isEqualTo(position);
    assertThat(refusal).hasMessageContaining("character " + position).hasMessageContaining(says);
  }

  @Test
  void what_just_fits_is_read() {
    assertThat(SvgPath.of("M100000 0L-100000 0").lengthMm()).isCloseTo(200_000, within(1e-9));
    String drawn = "M0 0L30 40";
    assertThat(SvgPath.of(drawn + " ".repeat(100_000 - drawn.length())).lengthMm())
        .isCloseTo(50, within(1e-9));
    assertThat(refusal(drawn + " ".repeat(100_001 - drawn.length())).position()).isEqualTo(100_001);
    // White space before a command, and none.
    assertThat(SvgPath.of("M0 0 L30 40 \n l 30 40").lengthMm()).isCloseTo(100, within(1e-9));
    assertThat(SvgPath.of("M0 0 L30 40 z").lengthMm()).isCloseTo(100, within(1e-9));
  }
}
