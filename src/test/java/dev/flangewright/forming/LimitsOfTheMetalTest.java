package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Ruffling, splitting, springback, bend radius and passes where no published number stands. */
class LimitsOfTheMetalTest {

  private static final Sheet SHEET = Sheet.of(1, 5);
  private static final MetalValues METAL =
      new MetalValues(18.0, 290.0, 440.0, 73_100.0, 2780.0, 4.0);

  @Test
  void the_edge_loaded_factor_is_four_thirds_of_the_hinged_factor() {
    // A long hinged flange twists about its root; with the stress growing from root to edge the
    // work
    // of the load is ∫σ·(y/b)·y²dy = b³/4 against b³/3: the factor rises by 4/3. With ν = 0.3 and
    // 6(1 − ν)/π² that is 0.567; EN 1993-1-5 table 4.2 prints 0.57.
    double hinged = 6 * (1 - 0.3) / (Math.PI * Math.PI);
    assertThat(Ruffling.EDGE_LOADED_FACTOR).isCloseTo(hinged * 4 / 3, within(0.005));
  }

  @Test
  void a_flange_twice_as_wide_ruffles_at_a_quarter_of_the_strain() {
    double narrow = Ruffling.criticalStrain(1, 12);
    assertThat(Ruffling.criticalStrain(1, 24)).isCloseTo(narrow / 4, within(1e-15));
    assertThat(Ruffling.criticalStrain(2, 24)).isCloseTo(narrow, within(1e-15));
    // κ·π²/(12·0.75)·(t/b)² by hand: 0.57·9.8696/9/144 = 0.0043408
    assertThat(narrow).isCloseTo(0.0043408, within(1e-7));
  }

  @Test
  void a_ruffle_swallows_exactly_the_strain_it_is_made_for() {
    // Length of a half sine wave by 20 000 straight pieces, against its base.
    double pitch = Ruffling.pitchMm(20);
    double height = Ruffling.heightMm(-0.01, 20);
    double length = 0;
    int pieces = 20_000;
    for (int i = 0; i < pieces; i++) {
      double rise = Math.sin(Math.PI * (i + 1) / pieces) - Math.sin(Math.PI * i / pieces);
      length += Math.hypot(pitch / pieces, height * rise);
    }
    // The height keeps only the first term of the wave's length: 3/4·ε of it is left out.
    assertThat(length / pitch - 1).isCloseTo(0.01, within(0.01 * 0.01));
  }

  @Test
  void an_edge_that_does_not_shrink_does_not_ruffle() {
    assertThat(Ruffling.ratio(0.05, 1, 20)).isZero();
    assertThat(Ruffling.ratio(0, 1, 20)).isZero();
    assertThat(Ruffling.heightMm(0.05, 20)).isZero();
    assertThat(Ruffling.ratio(-0.05, 1, 0)).isZero();
  }

  @Test
  void a_better_edge_stretches_further() {
    double last = 0;
    for (var edge :
        new EdgeCondition[] {
          EdgeCondition.SHEARED_WITH_BURR,
          EdgeCondition.FILED,
          EdgeCondition.DEBURRED,
          EdgeCondition.POLISHED
        }) {
      double limit = SplitLimit.strain(METAL, edge);
      assertThat(limit).isGreaterThan(last).isLessThan(Math.log(1.18));
      last = limit;
    }
    assertThat(
            SplitLimit.strain(
                METAL, EdgeCondition.POLISHED, new Practice(Map.of(ShopValue.GRAIN_FACTOR, 0.8))))
        .isCloseTo(0.8 * last, within(1e-15));
  }

  @Test
  void a_shrinking_edge_cannot_split_whatever_the_metal() {
    assertThat(SplitLimit.utilisation(-0.05, null)).isZero();
    assertThat(SplitLimit.utilisation(0.05, null)).isNull();
    assertThat(SplitLimit.utilisation(0.05, 0.1)).isEqualTo(0.5);
  }

  @Test
  void the_block_is_tighter_and_turned_further_than_the_part_and_gives_it_back() {
    double block = Springback.blockRadiusMm(SHEET, METAL);
    assertThat(block).isLessThan(5);
    assertThat(Springback.partRadiusMm(block, 1, 290, 73_100)).isCloseTo(5, within(1e-8));
    double angle =
        FlangeMetal.of(SHEET, METAL, EdgeCondition.DEBURRED, Practice.DEFAULT).blockAngleDeg(90);
    assertThat(angle).isGreaterThan(90);
    // The middle surface is as long on the block as in the part.
    assertThat(angle * (block + 0.5)).isCloseTo(90 * 5.5, within(1e-9));
  }

  @Test
  void any_radius_of_the_trade_has_a_block_radius() {
    for (double radius : new double[] {0, 1e-6, 0.1, 3, 30, 100}) {
      for (double proof : new double[] {1, 70, 500, 5000}) {
        for (double young : new double[] {1_000, 70_000, 1_000_000}) {
          double block = Springback.blockRadiusMm(radius, 0.1, proof, young);
          assertThat(block).isBetween(0.0, radius);
        }
      }
    }
  }

  @Test
  void a_stronger_metal_springs_back_more() {
    double soft = Springback.partRadiusMm(5, 1, 76, 73_100);
    double hard = Springback.partRadiusMm(5, 1, 345, 73_100);
    assertThat(hard).isGreaterThan(soft);
    assertThat(Springback.partRadiusMm(5, 1, 0.001, 73_100)).isCloseTo(5, within(1e-4));
  }

  @Test
  void a_bend_tighter_than_the_table_is_beyond_the_limit() {
    var fine = BendRadiusCheck.of(SHEET, METAL);
    assertThat(fine.isWideEnough()).isTrue();
    assertThat(fine.utilisation()).isEqualTo(0.8);
    var tight = BendRadiusCheck.of(Sheet.of(1, 3), METAL);
    assertThat(tight.isWideEnough()).isFalse();
    var sharp = BendRadiusCheck.of(Sheet.of(1, 0), METAL);
    assertThat(sharp.isWideEnough()).isFalse();
    var soft = new MetalValues(null, null, null, null, null, 0.0);
    assertThat(BendRadiusCheck.of(Sheet.of(1, 0), soft).utilisation()).isZero();
    assertThat(BendRadiusCheck.of(SHEET, MetalValues.UNKNOWN)).isNull();
  }

  @Test
  void no_pass_takes_more_than_its_share() {
    assertThat(Passes.count(0, 0.01)).isEqualTo(1);
    assertThat(Passes.count(-0.01, 0.01)).isEqualTo(1);
    assertThat(Passes.count(-0.0101, 0.01)).isEqualTo(2);
    assertThat(Passes.count(0.035, 0.01)).isEqualTo(4);
    // A stubby flange goes down in bigger steps: 1.5·ε_cr of t/b = 1/4 is 5.9 %.
    assertThat(Passes.strainPerPass(-0.1, 1, 4, Practice.DEFAULT))
        .isCloseTo(0.058601, within(1e-6));
    assertThat(Passes.strainPerPass(-0.1, 1, 30, Practice.DEFAULT)).isEqualTo(0.01);
    assertThat(Passes.strainPerPass(0.1, 1, 4, Practice.DEFAULT)).isEqualTo(0.01);
  }

  @Test
  void the_block_of_a_thicker_sheet_springs_back_to_the_part_as_well() {
    for (double thickness : new double[] {0.4, 1.6, 4}) {
      double block = Springback.blockRadiusMm(8, thickness, 290, 73_100);
      // Ri/Rf = 4x³ − 3x + 1 by hand.
      double x = block * 290 / (73_100 * thickness);
      assertThat(block / 8).isCloseTo(4 * x * x * x - 3 * x + 1, within(1e-9));
    }
    assertThat(Springback.ratio(-1)).isEqualTo(1);
    assertThat(Springback.ratio(7)).isZero();
    assertThat(Springback.partRadiusMm(0, 1, 290, 73_100)).isZero();
  }

  @Test
  void half_a_pass_more_counts_as_a_pass_and_a_ruffle_is_taken_once_and_a_half() {
    // b = 12 mm at 1 mm: ε_cr = 0.0043408 by hand (above), so that 1.5 times it is below 1 %;
    // b = 7 mm: 0.57·9.8696/9/49 = 0.012757.
    assertThat(Passes.strainPerPass(-0.1, 1, 12, Practice.DEFAULT)).isEqualTo(0.01);
    assertThat(Passes.strainPerPass(-0.1, 1, 7, Practice.DEFAULT))
        .isCloseTo(1.5 * 0.0127568, within(1e-6));
    assertThat(Passes.strainPerPass(0, 1, 7, Practice.DEFAULT)).isEqualTo(0.01);
    assertThat(Ruffling.ratio(-0.0086816, 1, 12)).isCloseTo(2, within(1e-4));
  }

  @Test
  void every_word_of_the_bench_is_said_and_no_two_are_the_same() {
    var words = new ArrayList<String>();
    for (var edge : EdgeCondition.values()) {
      words.add(edge.label());
    }
    for (var kind : FlangeKind.values()) {
      words.add(kind.label());
    }
    for (var mode : RiskMode.values()) {
      words.add(mode.label());
    }
    for (var level : RiskLevel.values()) {
      words.add(level.label());
    }
    assertThat(words).doesNotHaveDuplicates().allMatch(word -> word.matches("[a-z ,]{3,}"));
  }

  @Test
  void what_just_meets_a_limit_is_within_it() {
    assertThat(BendRadiusCheck.of(Sheet.of(1, 4), METAL).isWideEnough()).isTrue();
    double setback = StraightBend.setbackMm(SHEET, 90);
    assertThat(StraightBend.of(SHEET, setback, 90).flatMm()).isZero();
    // A straight edge does not split, whatever is known of the metal.
    assertThat(SplitLimit.utilisation(0, null)).isZero();
  }
}
