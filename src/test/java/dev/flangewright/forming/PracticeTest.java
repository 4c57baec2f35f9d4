package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A workshop's own values in place of the defaults. */
class PracticeTest {

  private static final Sheet SHEET = Sheet.of(1.2, 4);
  private static final MetalValues METAL = new MetalValues(18.0, 76.0, 186.0, 73_100.0, null, null);
  private static final List<Point> ARC = Loft.circle(150, Loft.even(0, 1.5, 41));

  private static Practice own(ShopValue which, double value) {
    return new Practice(Map.of(which, value));
  }

  private static FlangeFigures shrink(Practice practice) {
    return FlangeFigures.of(
        Loft.through(ARC), SHEET, METAL, EdgeCondition.FILED, List.of(), practice);
  }

  private static FlangeFigures stretch(Practice practice) {
    var contour = Loft.through(Loft.reversed(ARC));
    return FlangeFigures.of(contour, SHEET, METAL, EdgeCondition.FILED, List.of(), practice);
  }

  @Test
  void without_values_of_its_own_a_workshop_reckons_with_the_defaults() {
    assertThat(shrink(Practice.DEFAULT))
        .isEqualTo(FlangeFigures.of(Loft.through(ARC), SHEET, METAL, EdgeCondition.FILED));
    assertThat(Sheet.of(1.2, 4, null, Practice.DEFAULT)).isEqualTo(SHEET);
    for (var edge : EdgeCondition.values()) {
      assertThat(Practice.DEFAULT.edgeFactor(edge)).isEqualTo(edge.factor());
    }
  }

  @ParameterizedTest
  @EnumSource(ShopValue.class)
  void every_default_is_in_the_range_of_its_value_and_has_a_standing(ShopValue which) {
    assertThat(own(which, which.byDefault()).value(which)).isEqualTo(which.byDefault());
    assertThat(which.standing()).isNotBlank();
    assertThat(which.label()).isNotBlank();
  }

  @Test
  void half_the_edge_factor_is_half_the_split_limit() {
    double before = stretch(Practice.DEFAULT).peakSplitUtilisation();
    double after = stretch(own(ShopValue.FILED_EDGE, 0.325)).peakSplitUtilisation();
    assertThat(after).isCloseTo(2 * before, within(1e-12));
  }

  @Test
  void the_factor_of_another_edge_changes_nothing() {
    assertThat(stretch(own(ShopValue.POLISHED_EDGE, 0.5))).isEqualTo(stretch(Practice.DEFAULT));
  }

  @Test
  void a_grain_factor_lowers_the_limit_of_every_edge() {
    double before = stretch(Practice.DEFAULT).peakSplitUtilisation();
    double after = stretch(own(ShopValue.GRAIN_FACTOR, 0.8)).peakSplitUtilisation();
    assertThat(after).isCloseTo(before / 0.8, within(1e-12));
  }

  @Test
  void twice_the_strain_a_pass_needs_about_half_the_passes() {
    int before = stretch(Practice.DEFAULT).passes();
    int after = stretch(own(ShopValue.STRAIN_PER_PASS, 0.02)).passes();
    assertThat(before).isGreaterThan(4);
    assertThat(after).isBetween((before - 1) / 2, (before + 1) / 2);
  }

  @Test
  void the_ruffle_multiple_governs_a_stout_flange_that_shrinks() {
    // t/b large: the ruffle strain, not the least strain, sets the pass.
    double once = Passes.strainPerPass(-0.1, 3, 20, own(ShopValue.RUFFLE_MULTIPLE, 1));
    double thrice = Passes.strainPerPass(-0.1, 3, 20, own(ShopValue.RUFFLE_MULTIPLE, 3));
    assertThat(once).isGreaterThan(0.01).isEqualTo(Ruffling.criticalStrain(3, 20));
    assertThat(thrice).isCloseTo(3 * once, within(1e-15));
  }

  @Test
  void the_plan_softens_and_changes_blocks_by_the_workshops_values() {
    var figures = shrink(Practice.DEFAULT);
    double uniform = Math.abs(figures.peakEdgeStrain()) * 1.1;
    var late = FormingPlan.of(figures, SHEET, uniform, own(ShopValue.SHARE_BEFORE_SOFTENING, 1));
    var early = FormingPlan.of(figures, SHEET, uniform, own(ShopValue.SHARE_BEFORE_SOFTENING, 0.3));
    assertThat(late.softenings()).isZero();
    assertThat(early.softenings()).isGreaterThan(1);
    assertThat(late.firstBlockAngleDeg()).isNotNull();
    var patient = own(ShopValue.PASSES_ON_ONE_BLOCK, 50);
    assertThat(FormingPlan.of(figures, SHEET, uniform, patient).firstBlockAngleDeg()).isNull();
  }

  @Test
  void the_anisotropy_of_a_certificate_comes_before_the_workshops() {
    var practice = new Practice(Map.of(ShopValue.ANISOTROPY, 0.7, ShopValue.K_FACTOR, 0.4));
    assertThat(Sheet.of(1, 3, null, practice)).isEqualTo(new Sheet(1, 3, 0.4, 0.7));
    assertThat(Sheet.of(1, 3, 0.65, practice)).isEqualTo(new Sheet(1, 3, 0.4, 0.65));
  }

  @ParameterizedTest
  @CsvSource({
    "POLISHED_EDGE, 0",
    "POLISHED_EDGE, 1.01",
    "GRAIN_FACTOR, 0",
    "RUFFLE_MULTIPLE, 0",
    "STRAIN_PER_PASS, 0",
    "SHARE_BEFORE_SOFTENING, 1.2",
    "PASSES_ON_ONE_BLOCK, 0",
    "K_FACTOR, -0.1",
    "ANISOTROPY, 0",
    "ANISOTROPY, NaN"
  })
  void a_value_out_of_its_range_is_refused(ShopValue which, double value) {
    assertThatThrownBy(() -> own(which, value))
        .isInstanceOfSatisfying(
            FormingException.class,
            refusal -> assertThat(refusal.field()).isEqualTo(which.range().field()));
  }

  @Test
  void passes_on_a_block_are_counted_in_whole_numbers() {
    assertThatThrownBy(() -> own(ShopValue.PASSES_ON_ONE_BLOCK, 2.5))
        .isInstanceOf(FormingException.class)
        .hasMessageContaining("whole number");
  }
}
