package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which failure mode governs. */
class RiskTest {

  private static final List<Point> ARC = Loft.circle(400, Loft.even(0, 1, 41));

  private static FlangeFigures flange(List<Point> points, Sheet sheet, MetalValues metal) {
    return FlangeFigures.of(Loft.through(points), sheet, metal, EdgeCondition.DEBURRED);
  }

  private static MetalValues metal(Double elongation, Double minBendRadius) {
    return new MetalValues(elongation, null, null, null, null, minBendRadius);
  }

  @Test
  void a_stretch_flange_of_short_metal_is_governed_by_splitting() {
    var flange = flange(Loft.reversed(ARC), Sheet.of(1, 4), metal(6.0, 1.0));
    var risk = Risk.of(flange);
    assertThat(risk.governing()).isEqualTo(RiskMode.SPLIT);
    assertThat(risk.utilisation()).isEqualTo(flange.peakSplitUtilisation());
  }

  @Test
  void a_tight_bend_in_hard_metal_is_governed_by_the_bend() {
    var risk = Risk.of(flange(ARC, Sheet.of(1, 2), metal(18.0, 5.0)));
    assertThat(risk.governing()).isEqualTo(RiskMode.BEND_RADIUS);
    assertThat(risk.utilisation()).isCloseTo(2.5, within(1e-12));
    assertThat(risk.level()).isEqualTo(RiskLevel.BEYOND);
  }

  @Test
  void a_shrink_flange_of_soft_metal_is_governed_by_its_ruffles() {
    var flange = flange(ARC, Sheet.of(1, 4), metal(20.0, 0.0));
    var risk = Risk.of(flange);
    assertThat(risk.governing()).isEqualTo(RiskMode.RUFFLE);
    assertThat(risk.utilisation()).isEqualTo(flange.passes() / 8.0);
    assertThat(risk.unknown()).isEmpty();
  }

  @Test
  void a_part_is_as_risky_as_its_worst_flange() {
    var shrink = flange(ARC, Sheet.of(1, 4), metal(6.0, 1.0));
    var stretch = flange(Loft.reversed(ARC), Sheet.of(1, 4), metal(6.0, 1.0));
    assertThat(Risk.of(List.of(shrink, stretch)).utilisation())
        .isEqualTo(Math.max(Risk.of(shrink).utilisation(), Risk.of(stretch).utilisation()));
  }

  @Test
  void what_cannot_be_assessed_is_named_and_not_taken_for_safe() {
    var risk = Risk.of(flange(Loft.reversed(ARC), Sheet.of(1, 4), MetalValues.UNKNOWN));
    assertThat(risk.unknown()).containsExactly(RiskMode.SPLIT, RiskMode.BEND_RADIUS);
    assertThat(risk.governing()).isEqualTo(RiskMode.RUFFLE);
    assertThat(risk.utilisation()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "0, LOW",
    "0.599, LOW",
    "0.6, MODERATE",
    "0.849, MODERATE",
    "0.85, HIGH",
    "1, HIGH",
    "1.001, BEYOND",
    "Infinity, BEYOND"
  })
  void levels_follow_the_utilisation(double utilisation, RiskLevel level) {
    assertThat(RiskLevel.of(utilisation)).isEqualTo(level);
  }
}
