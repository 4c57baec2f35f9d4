package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.DoubleUnaryOperator;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What gauges at the bench say about an edge. */
class GaugeTest {

  private static final Sheet SHEET = Sheet.of(1, 3);

  private static double integral(DoubleUnaryOperator f, double from, double to) {
    return new IterativeLegendreGaussIntegrator(8, 1e-12, 1e-12)
        .integrate(10_000, f::applyAsDouble, from, to);
  }

  /** The closed form against direct integration over the section with a general-purpose library. */
  @ParameterizedTest
  @CsvSource({"80, 1, 16, 90, 0, 0", "80, 1.2, 16, 75, 14, 90", "60, 0.8, 24, 110, 12, 60"})
  void the_bow_of_the_section_agrees_with_direct_integration(
      double depth, double t, double b, double angle, double b2, double angle2) {
    double sine = Math.sin(Math.toRadians(angle));
    double sine2 = Math.sin(Math.toRadians(angle2));
    double area = depth * t + b * t + b2 * t;
    double centroid =
        (integral(s -> s * sine * t, 0, b) + (b2 == 0 ? 0 : integral(s -> s * sine2 * t, 0, b2)))
            / area;
    double inertia =
        integral(y -> depth * (y - centroid) * (y - centroid), -t / 2, t / 2)
            + integral(s -> t * (s * sine - centroid) * (s * sine - centroid), 0, b)
            + (b2 == 0
                ? 0
                : integral(s -> t * (s * sine2 - centroid) * (s * sine2 - centroid), 0, b2));
    double strain = 0.004;
    double moment = integral(s -> strain * s / b * (s * sine - centroid) * t, 0, b);
    double gap = moment / inertia * 300 * 300 / 8;
    var gauge = new BowGauge(depth, t, b, angle, b2, angle2);
    assertThat(gauge.gapMm(strain, 300)).isCloseTo(gap, withinPercentage(1e-6));
    assertThat(gauge.of(gap, 300).strain()).isCloseTo(strain, withinPercentage(1e-6));
    assertThat(gauge.of(gap, 300).millimetres()).isCloseTo(strain * 300, withinPercentage(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"80, 1, 16, 0", "90, 1.2, 20, 14"})
  void the_templates_gap_agrees_with_direct_integration(
      double depth, double t, double b, double b2) {
    double area = t * (depth + b + b2);
    double centroid = t * (b - b2) * depth / 2 / area;
    double inertia =
        integral(x -> t * (x - centroid) * (x - centroid), -depth / 2, depth / 2)
            + b * t * Math.pow(depth / 2 - centroid, 2)
            + b2 * t * Math.pow(depth / 2 + centroid, 2);
    double strain = 0.003;
    double force = integral(s -> strain * s / b * t, 0, b);
    double gap = force * (depth / 2 - centroid) / inertia * 400 * 400 / 8;
    var rest = new TemplateGauge(depth, t, b, b2).of(gap, 400);
    assertThat(rest.strain()).isCloseTo(strain, withinPercentage(1e-6));
    assertThat(rest.millimetres()).isCloseTo(strain * 400, withinPercentage(1e-6));
  }

  @Test
  void a_straight_edge_that_sits_flat_shows_nothing_left_to_do() {
    assertThat(new BowGauge(80, 1, 16, 90, 0, 0).of(0, 300).millimetres()).isZero();
  }

  @Test
  void a_bow_is_a_lower_bound_because_a_ruffled_edge_bows_less() {
    assertThat(new BowGauge(80, 1, 16, 90, 0, 0).of(1, 300).lowerBound()).isTrue();
  }

  /** FL-09 of the check values: an engineering strain of −5 % thickens t to 1.0260 t. Derived. */
  @Test
  void a_thickened_edge_has_shrunk() {
    assertThat(EdgeGauge.strainOfThickness(1.0260, SHEET)).isCloseTo(Math.log(0.95), within(1e-4));
    assertThat(EdgeGauge.strainOfThickness(2.0520, Sheet.of(2, 3)))
        .isCloseTo(Math.log(0.95), within(1e-4));
  }

  @Test
  void an_edge_that_has_reached_its_demand_has_nothing_left_by_any_gauge() {
    var station = flange().stations().get(5);
    assertThat(EdgeGauge.restByThickness(station, SHEET, station.edgeThicknessMm(), 50).strain())
        .isCloseTo(0, within(1e-12));
    assertThat(EdgeGauge.restByAngle(station, SHEET, station.bendAngleDeg(), 50).strain()).isZero();
    assertThat(EdgeGauge.restByAngle(station, SHEET, 120, 50).strain()).isZero();
  }

  @Test
  void an_edge_of_the_sheets_own_thickness_has_everything_left() {
    var station = flange().stations().get(5);
    assertThat(EdgeGauge.restByThickness(station, SHEET, 1, 50).millimetres())
        .isCloseTo(-station.edgeStrain() * 50, withinPercentage(1e-9));
  }

  @Test
  void the_further_the_flange_is_down_the_less_is_left() {
    var station = flange().stations().get(5);
    double before = Double.POSITIVE_INFINITY;
    for (double angle = 5; angle <= 90; angle += 5) {
      double rest = EdgeGauge.restByAngle(station, SHEET, angle, 50).strain();
      assertThat(rest).isLessThan(before);
      before = rest;
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -1, 101, Double.POSITIVE_INFINITY})
  void a_gap_that_no_feeler_gauge_shows_is_refused(double gap) {
    assertThatThrownBy(() -> new BowGauge(80, 1, 16, 90, 0, 0).of(gap, 300))
        .isInstanceOf(FormingException.class)
        .hasMessageContaining("gapMm");
  }

  private static FlangeFigures flange() {
    var points = Loft.circle(400, Loft.even(0, 1, 21));
    return FlangeFigures.of(
        Loft.through(points), SHEET, MetalValues.UNKNOWN, EdgeCondition.DEBURRED);
  }

  @Test
  void every_gauge_refuses_a_reading_out_of_its_range_by_name() {
    var station = flange().stations().get(5);
    var bow = new BowGauge(80, 1, 16, 90, 0, 0);
    var template = new TemplateGauge(80, 1, 16, 0);
    refuses("spanMm", () -> bow.of(1, 4));
    refuses("spanMm", () -> bow.gapMm(0.01, 4));
    refuses("gapMm", () -> template.of(101, 300));
    refuses("spanMm", () -> template.of(1, 4));
    refuses("edgeThicknessMm", () -> EdgeGauge.strainOfThickness(0.04, SHEET));
    refuses("spanMm", () -> EdgeGauge.restByThickness(station, SHEET, 1, 4));
    refuses("spanMm", () -> EdgeGauge.restByAngle(station, SHEET, 45, 4));
    refuses("bendAngleDeg", () -> EdgeGauge.restByAngle(station, SHEET, 165, 50));
    refuses("webDepthMm", () -> new BowGauge(0, 1, 16, 90, 0, 0));
    refuses("thicknessMm", () -> new BowGauge(80, 0, 16, 90, 0, 0));
    refuses("flangeWidthMm", () -> new BowGauge(80, 1, 0, 90, 0, 0));
    refuses("bendAngleDeg", () -> new BowGauge(80, 1, 16, 0, 0, 0));
    refuses("otherFlatWidthMm", () -> new BowGauge(80, 1, 16, 90, -1, 0));
    refuses("bendAngleDeg", () -> new BowGauge(80, 1, 16, 90, 12, 0));
    refuses("webDepthMm", () -> new TemplateGauge(0, 1, 16, 0));
    refuses("thicknessMm", () -> new TemplateGauge(80, 0, 16, 0));
    refuses("flangeWidthMm", () -> new TemplateGauge(80, 1, 0, 0));
    refuses("otherFlatWidthMm", () -> new TemplateGauge(80, 1, 16, -1));
  }

  private static void refuses(String field, ThrowingCallable reading) {
    var refusal = catchThrowableOfType(FormingException.class, reading);
    assertThat(refusal).as(field).isNotNull();
    assertThat(refusal.field()).isEqualTo(field);
  }

  @Test
  void what_is_left_by_the_angle_is_the_strain_between_the_two_angles() {
    var station = flange().stations().get(5);
    double whole = FlangeSection.of(FlangeKind.SHRINK, 400, SHEET, 20, 90).edgeStrain();
    double now = FlangeSection.of(FlangeKind.SHRINK, 400, SHEET, 20, 50).edgeStrain();
    var rest = EdgeGauge.restByAngle(station, SHEET, 50, 80);
    assertThat(rest.strain()).isCloseTo(now - whole, withinPercentage(1e-4));
    assertThat(rest.millimetres()).isCloseTo(80 * (now - whole), withinPercentage(1e-4));
    assertThat(rest.lowerBound()).isTrue();
    assertThat(EdgeGauge.restByThickness(station, SHEET, 1, 80).lowerBound()).isFalse();
  }

  @Test
  void a_stretched_edge_that_is_not_thin_enough_yet_has_the_difference_left() {
    var points = Loft.reversed(Loft.circle(400, Loft.even(0, 1, 21)));
    var station =
        FlangeFigures.of(Loft.through(points), SHEET, MetalValues.UNKNOWN, EdgeCondition.DEBURRED)
            .stations()
            .get(5);
    // R = 1: half of the strain goes into the thickness, by volume constancy.
    double done = station.edgeStrain() / 4;
    double thickness = Math.exp(-done / 2);
    assertThat(EdgeGauge.restByThickness(station, SHEET, thickness, 50).strain())
        .isCloseTo(station.edgeStrain() * 3 / 4, withinPercentage(1e-9));
    assertThat(EdgeGauge.restByThickness(station, SHEET, 0.8, 50).strain()).isZero();
  }
}
