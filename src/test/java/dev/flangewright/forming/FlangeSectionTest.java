package dev.flangewright.forming;

import static dev.flangewright.forming.FlangeKind.PLAIN;
import static dev.flangewright.forming.FlangeKind.SHRINK;
import static dev.flangewright.forming.FlangeKind.STRETCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Limits and signs of a section; numbers against published values are in CheckValuesTest. */
class FlangeSectionTest {

  private static final Sheet SHEET = Sheet.of(1.2, 3);

  @ParameterizedTest
  @EnumSource(names = {"SHRINK", "STRETCH"})
  void as_the_contour_straightens_the_blank_becomes_that_of_a_straight_flange(FlangeKind kind) {
    for (double angle : new double[] {15, 60, 90, 120, 150}) {
      double straight = StraightBend.of(SHEET, 40, angle).straightBlankMm();
      // The correction falls as 1/R: W²/R = 1600/R bounds it with room for the angle; at R = 1e9
      // that is 1.6e-6 mm. A wrong limit would show as a difference that stops falling.
      for (double radius : new double[] {1e5, 1e7, 1e9}) {
        var section = FlangeSection.of(kind, radius, SHEET, 40, angle);
        assertThat(section.blankBeyondTangentMm()).isCloseTo(straight, within(1600 / radius));
        assertThat(Math.abs(section.edgeStrain())).isLessThan(2 * 40 / radius);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"SHRINK", "STRETCH", "PLAIN"})
  void a_flange_hardly_bent_is_blank_as_wide_as_the_flange(FlangeKind kind) {
    // At 0.001 degrees setback and allowance differ from the flat by less than θ·(Ri + t) = 7e-5
    // mm.
    var section = FlangeSection.of(kind, 200, SHEET, 20, 0.001);
    assertThat(section.blankBeyondTangentMm()).isCloseTo(20, within(1e-4));
    assertThat(section.edgeStrain()).isCloseTo(0, within(1e-9));
    assertThat(section.edgeThicknessMm()).isCloseTo(1.2, within(1e-8));
  }

  @Test
  void a_shrink_edge_is_gathered_gets_thicker_and_needs_less_blank() {
    var section = FlangeSection.of(SHRINK, 500, SHEET, 20, 90);
    assertThat(section.edgeStrain()).isNegative();
    assertThat(section.gatherMmPerMetre()).isPositive();
    assertThat(section.edgeThicknessMm()).isGreaterThan(1.2);
    assertThat(section.blankBeyondTangentMm()).isLessThan(section.straightBlankMm());
    assertThat(section.blankEdgeRadiusMm()).isGreaterThan(section.formedEdgeRadiusMm());
    assertThat(section.tangentRadiusMm()).isEqualTo(500 - section.setbackMm());
  }

  @Test
  void a_stretch_edge_gains_gets_thinner_and_needs_more_room_than_a_shrink_edge() {
    var section = FlangeSection.of(STRETCH, 500, SHEET, 20, 90);
    assertThat(section.edgeStrain()).isPositive();
    assertThat(section.gatherMmPerMetre()).isNegative();
    assertThat(section.edgeThicknessMm()).isLessThan(1.2);
    assertThat(section.blankEdgeRadiusMm()).isLessThan(section.formedEdgeRadiusMm());
    assertThat(section.tangentRadiusMm()).isEqualTo(500 + section.setbackMm());
  }

  @Test
  void the_formed_right_angle_edge_stands_at_the_mould_line_less_the_neutral_depth() {
    // At 90° the flange's neutral surface lies (1 − k)·t inside the outer mould line.
    double depth = (1 - SHEET.kFactor()) * SHEET.thicknessMm();
    var shrink = FlangeSection.of(SHRINK, 500, SHEET, 20, 90);
    var stretch = FlangeSection.of(STRETCH, 500, SHEET, 20, 90);
    assertThat(shrink.formedEdgeRadiusMm()).isCloseTo(500 - depth, within(1e-9));
    assertThat(stretch.formedEdgeRadiusMm()).isCloseTo(500 + depth, within(1e-9));
  }

  @Test
  void a_sheet_that_resists_thinning_gives_back_more_width() {
    var easy = new Sheet(1.2, 3, 0.45, 0.5);
    var stiff = new Sheet(1.2, 3, 0.45, 2);
    var thinsMore = FlangeSection.of(STRETCH, 150, easy, 20, 90);
    var thinsLess = FlangeSection.of(STRETCH, 150, stiff, 20, 90);
    assertThat(thinsLess.edgeThicknessMm()).isGreaterThan(thinsMore.edgeThicknessMm());
    assertThat(thinsLess.blankBeyondTangentMm()).isGreaterThan(thinsMore.blankBeyondTangentMm());
  }

  @Test
  void a_plain_flange_ignores_the_radius() {
    var section = FlangeSection.of(PLAIN, Double.NaN, SHEET, 20, 90);
    assertThat(section.blankBeyondTangentMm()).isEqualTo(section.straightBlankMm());
    assertThat(section.edgeStrain()).isZero();
    assertThat(section.gatherMmPerMetre()).isZero();
    assertThat(section.edgeThicknessMm()).isEqualTo(1.2);
    assertThat(section.tangentRadiusMm()).isInfinite();
  }

  @Test
  void the_gather_is_the_difference_of_the_two_edge_lengths_for_a_metre_of_tangent_line() {
    var section = FlangeSection.of(SHRINK, 300, SHEET, 25, 75);
    double angle = 1000 / section.tangentRadiusMm();
    double blankEdge = section.blankEdgeRadiusMm() * angle;
    double formedEdge = section.formedEdgeRadiusMm() * angle;
    // Rounding only: the two lengths are near 1000 mm and carry 1e-13 each.
    assertThat(section.gatherMmPerMetre()).isCloseTo(blankEdge - formedEdge, within(1e-9));
  }
}
