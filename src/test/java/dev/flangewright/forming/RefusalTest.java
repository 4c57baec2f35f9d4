package dev.flangewright.forming;

import static dev.flangewright.forming.FlangeKind.SHRINK;
import static dev.flangewright.forming.FlangeKind.STRETCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.forming.FormingException.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the calculation refuses, and that it says which field, what value and what is allowed. */
class RefusalTest {

  private static final Sheet SHEET = Sheet.of(1, 3);

  private static FormingException refusal(ThrowingCallable call) {
    var refusal = catchThrowableOfType(FormingException.class, call);
    assertThat(refusal).as("a refusal").isNotNull();
    return refusal;
  }

  @ParameterizedTest
  @EnumSource
  void no_input_may_be_missing_a_number(FormingInput input) {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1 / 0.0}) {
      var refusal = refusal(() -> input.check(bad));
      assertThat(refusal.reason()).isEqualTo(Reason.NOT_FINITE);
      assertThat(refusal.field()).isEqualTo(input.field());
      assertThat(refusal).hasMessageContaining(input.rangeText());
    }
  }

  @ParameterizedTest
  @EnumSource
  void every_input_has_a_range_and_refuses_what_lies_outside(FormingInput input) {
    for (double bad : new double[] {input.min() - 0.001, input.max() * 1.001}) {
      var refusal = refusal(() -> input.check(bad));
      assertThat(refusal.reason()).isEqualTo(Reason.OUT_OF_RANGE);
      assertThat(refusal.value()).isEqualTo(bad);
      assertThat(refusal.min()).isEqualTo(input.min());
      assertThat(refusal.max()).isEqualTo(input.max());
    }
    double middle = (input.min() + input.max()) / 2;
    assertThat(input.check(middle)).isEqualTo(middle);
  }

  @Test
  void a_bend_angle_out_of_range_reads_as_a_sentence() {
    assertThat(refusal(() -> FlangeSection.of(SHRINK, 500, SHEET, 20, 170)))
        .hasMessage("bendAngleDeg is 170; it must be above 0 and below 165");
    assertThat(refusal(() -> new Station(7, 0, 0, 165, 20)))
        .hasMessage("station 7: bendAngleDeg is 165; it must be above 0 and below 165");
    assertThat(refusal(() -> Sheet.of(Double.NaN, 3)))
        .hasMessage("thicknessMm is not a number; it must be from 0.1 to 10");
    assertThat(refusal(() -> FlangeSection.of(SHRINK, 0, SHEET, 20, 90)).field())
        .isEqualTo("contourRadiusMm");
    assertThat(refusal(() -> FlangeSection.of(SHRINK, 1 / 0.0, SHEET, 20, 90)))
        .hasMessageStartingWith("contourRadiusMm is infinite");
  }

  @Test
  void a_flange_shorter_than_its_bend_is_refused_with_the_setback() {
    var refusal = refusal(() -> FlangeSection.of(FlangeKind.PLAIN, 0, SHEET, 3.9, 90));
    assertThat(refusal.reason()).isEqualTo(Reason.FLANGE_SHORTER_THAN_BEND);
    assertThat(refusal)
        .hasMessage(
            "flangeWidthMm is 3.9; it must be at least 4:"
                + " the flange would be shorter than its own bend");
    assertThat(FlangeSection.of(FlangeKind.PLAIN, 0, SHEET, 4.0000001, 90)).isNotNull();
  }

  @Test
  void a_flange_wider_than_a_concave_contour_allows_is_refused_with_the_width_that_would_do() {
    for (double angle : new double[] {30, 60, 90, 120, 150}) {
      var refusal = refusal(() -> FlangeSection.of(STRETCH, 40, SHEET, 200, angle));
      assertThat(refusal.reason()).isEqualTo(Reason.FLANGE_WIDER_THAN_CONTOUR);
      assertThat(refusal.field()).isEqualTo("flangeWidthMm");
      double limit = refusal.max();
      assertThat(FlangeSection.of(STRETCH, 40, SHEET, limit * 0.9999, angle)).isNotNull();
      assertThat(refusal(() -> FlangeSection.of(STRETCH, 40, SHEET, limit * 1.0001, angle)).max())
          .isEqualTo(limit);
    }
  }

  @Test
  void a_shrink_flange_folded_back_across_the_centre_is_refused() {
    var refusal = refusal(() -> FlangeSection.of(SHRINK, 60, SHEET, 200, 150));
    assertThat(refusal.field()).isEqualTo("flangeWidthMm");
    assertThat(FlangeSection.of(SHRINK, 60, SHEET, refusal.max() * 0.9999, 150)).isNotNull();
  }

  @Test
  void a_convex_contour_tighter_than_the_setback_is_refused() {
    var refusal = refusal(() -> FlangeSection.of(SHRINK, 3, SHEET, 20, 90));
    assertThat(refusal.reason()).isEqualTo(Reason.FLANGE_WIDER_THAN_CONTOUR);
    assertThat(refusal.field()).isEqualTo("contourRadiusMm");
    assertThat(refusal).hasMessageContaining("above 4");
  }

  @Test
  void a_concave_contour_too_tight_for_the_bend_alone_is_refused_by_its_radius() {
    var refusal = refusal(() -> FlangeSection.of(STRETCH, 0.5, Sheet.of(1, 30), 50, 90));
    assertThat(refusal.reason()).isEqualTo(Reason.FLANGE_WIDER_THAN_CONTOUR);
    assertThat(refusal.field()).isEqualTo("contourRadiusMm");
  }

  @Test
  void a_single_section_is_never_mixed() {
    var refusal = refusal(() -> FlangeSection.of(FlangeKind.MIXED, 500, SHEET, 20, 90));
    assertThat(refusal.reason()).isEqualTo(Reason.KIND_NEEDS_STATIONS);
    assertThat(refusal.field()).isEqualTo("kind");
  }

  @Test
  void a_flange_names_the_station_at_which_it_is_too_wide() {
    var points = Loft.reversed(Loft.circle(30, Loft.even(0, 2, 12)));
    var contour = Loft.through(points, 90, 45);
    var refusal =
        refusal(
            () -> FlangeFigures.of(contour, SHEET, MetalValues.UNKNOWN, EdgeCondition.DEBURRED));
    assertThat(refusal.reason()).isEqualTo(Reason.FLANGE_WIDER_THAN_CONTOUR);
    assertThat(refusal.station()).isEqualTo(1);
    assertThat(refusal).hasMessageStartingWith("station 1: flangeWidthMm is 45");
  }

  @Test
  void too_few_or_too_many_stations_are_refused() {
    assertThat(refusal(() -> Contour.of(List.of())).reason()).isEqualTo(Reason.TOO_FEW_STATIONS);
    assertThat(refusal(() -> Contour.of(List.of(station(1, 0, 0)))))
        .hasMessage("stations is 1; it must be from 2 to 2000");
    var many = new ArrayList<Station>();
    for (int i = 0; i <= 2000; i++) {
      many.add(station(i, i, 0));
    }
    assertThat(refusal(() -> Contour.of(many)).reason()).isEqualTo(Reason.TOO_MANY_STATIONS);
    assertThat(Contour.of(many.subList(0, 2000)).kind()).isEqualTo(FlangeKind.PLAIN);
  }

  @Test
  void station_numbers_must_rise() {
    var refusal = refusal(() -> Contour.of(List.of(station(3, 0, 0), station(3, 10, 0))));
    assertThat(refusal.reason()).isEqualTo(Reason.STATION_NUMBERS);
    assertThat(refusal.station()).isEqualTo(3);
  }

  @Test
  void neighbouring_stations_must_not_coincide() {
    var refusal =
        refusal(
            () -> Contour.of(List.of(station(1, 0, 0), station(2, 10, 0), station(3, 10, 0.005))));
    assertThat(refusal.reason()).isEqualTo(Reason.STATIONS_COINCIDE);
    assertThat(refusal.station()).isEqualTo(3);
  }

  @Test
  void a_contour_that_crosses_itself_is_refused_where_it_does() {
    var refusal =
        refusal(
            () ->
                Contour.of(
                    List.of(
                        station(1, 0, 0),
                        station(2, 100, 0),
                        station(3, 100, 80),
                        station(4, 55, 10),
                        station(5, 50, -40))));
    assertThat(refusal.reason()).isEqualTo(Reason.CONTOUR_CROSSES_ITSELF);
    assertThat(refusal.station()).isEqualTo(4);
  }

  @Test
  void a_contour_that_runs_back_over_itself_is_refused() {
    var back = List.of(station(1, 0, 0), station(2, 100, 0), station(3, 40, 0));
    assertThat(refusal(() -> Contour.of(back)).reason()).isEqualTo(Reason.CONTOUR_CROSSES_ITSELF);
  }

  @Test
  void a_metal_value_out_of_range_is_refused_by_its_name() {
    assertThat(refusal(() -> new MetalValues(-1.0, null, null, null, null, null)).field())
        .isEqualTo("elongationPercent");
    assertThat(refusal(() -> new MetalValues(null, null, null, 73.1, null, null)))
        .hasMessageStartingWith("youngMpa is 73.1; it must be from 1000");
  }

  private static Station station(int number, double x, double y) {
    return new Station(number, x, y, 90, 20);
  }

  @Test
  void a_bound_that_is_named_may_be_reached_and_one_to_stay_above_or_below_may_not() {
    for (var input : FormingInput.values()) {
      boolean low = !input.rangeText().contains("above");
      boolean high = !input.rangeText().contains("below");
      assertThat(reaches(input, input.min())).as(input.rangeText()).isEqualTo(low);
      assertThat(reaches(input, input.max())).as(input.rangeText()).isEqualTo(high);
    }
    assertThat(FormingInput.BEND_ANGLE.rangeText()).isEqualTo("above 0 and below 165");
    assertThat(FormingInput.FLANGE_WIDTH.rangeText()).isEqualTo("above 0 and at most 500");
    assertThat(FormingInput.THICKNESS.rangeText()).isEqualTo("from 0.1 to 10");
  }

  private static boolean reaches(FormingInput input, double value) {
    try {
      return input.check(value) == value;
    } catch (FormingException refusal) {
      return false;
    }
  }

  @Test
  void every_value_of_a_metal_and_a_sheet_is_checked_by_its_name() {
    var fields = new ArrayList<String>();
    for (int i = 0; i < 6; i++) {
      var values = new Double[6];
      values[i] = -1.0;
      fields.add(
          refusal(
                  () ->
                      new MetalValues(
                          values[0], values[1], values[2], values[3], values[4], values[5]))
              .field());
    }
    fields.add(refusal(() -> new Sheet(1, -1, 0.5, 1)).field());
    fields.add(refusal(() -> new Sheet(1, 1, 2, 1)).field());
    fields.add(refusal(() -> new Sheet(1, 1, 0.5, 9)).field());
    fields.add(refusal(() -> station(1, 2e5, 0)).field());
    fields.add(refusal(() -> station(1, 0, 2e5)).field());
    fields.add(refusal(() -> new Station(1, 0, 0, 90, 501)).field());
    fields.add(refusal(() -> new Practice(Map.of(ShopValue.GRAIN_FACTOR, 2.0))).field());
    assertThat(fields)
        .containsExactly(
            "elongationPercent",
            "proofMpa",
            "utsMpa",
            "youngMpa",
            "densityKgM3",
            "minBendRadiusMm",
            "insideBendRadiusMm",
            "kFactor",
            "anisotropy",
            "xMm",
            "yMm",
            "widthMm",
            "grainFactor");
  }

  @Test
  void an_edge_that_just_reaches_the_centre_is_refused_and_one_short_of_it_is_not() {
    // A sharp right angle without flow: the blank of a concave flange as wide as the radius.
    assertThat(EdgeDevelopment.of(-1, 100, 0, Math.PI / 2, 100, 0)).isNull();
    assertThat(EdgeDevelopment.of(-1, 100, 0, Math.PI / 2, 99.99, 0)).isNotNull();
    assertThat(EdgeDevelopment.flatLimit(-1, 100, 0, Math.PI / 2, 0)).isCloseTo(100, within(1e-9));
    // With flow r0^(1+m) = R^(1+m) − (1+m)·R^m·h (FL-05 of the check values): h = R/(1 + m).
    assertThat(EdgeDevelopment.flatLimit(-1, 100, 0, Math.PI / 2, 0.5))
        .isCloseTo(100 / 1.5, within(1e-9));
    // Folded flat back over the web of a convex contour, a sharp flange as wide as the radius.
    assertThat(EdgeDevelopment.of(+1, 100, 0, Math.PI, 100, 0.5)).isNull();
    assertThat(EdgeDevelopment.flatLimit(+1, 100, 0, Math.PI, 0.5)).isCloseTo(100, within(1e-9));
    assertThat(EdgeDevelopment.flatLimit(+1, 100, 0, Math.PI / 3, 0.5)).isInfinite();
    // At 120° the edge comes in by half of its flat, from 100 + 10·sin 120° on.
    assertThat(EdgeDevelopment.flatLimit(+1, 100, 10, Math.toRadians(120), 0.5))
        .isCloseTo(2 * (100 + 5 * Math.sqrt(3)), within(1e-9));
  }

  @Test
  void a_bend_that_passes_the_centre_by_itself_has_no_width_that_would_do() {
    // Neutral radius as large as the tangent line's: at 90° the bend ends in the centre; beyond
    // it the bend comes back, 12·sin 150° = 6 mm from the tangent line, but has been there.
    assertThat(EdgeDevelopment.of(-1, 10, 10, Math.PI / 2, 0, 0.5)).isNull();
    assertThat(EdgeDevelopment.flatLimit(-1, 10, 10, Math.PI / 2, 0.5)).isNull();
    assertThat(EdgeDevelopment.of(-1, 10, 12, Math.toRadians(150), 0, 0.5)).isNull();
    assertThat(EdgeDevelopment.flatLimit(-1, 10, 12, Math.toRadians(150), 0.5)).isNull();
    var refusal = refusal(() -> FlangeSection.of(STRETCH, 5, Sheet.of(1, 30), 50, 60));
    assertThat(refusal.field()).isEqualTo("contourRadiusMm");
    assertThat(refusal.min()).isNull();
    assertThat(refusal.max()).isNull();
  }
}
