package dev.flangewright.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.testing.DatabaseTest;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

@DatabaseTest
class MaterialLibraryTest {

  @Autowired MaterialLibrary library;

  /** FAA AC 43.13-1B (9/8/98), ch. 4, table 4-6: upper figure of the range, times thickness. */
  @ParameterizedTest
  @CsvSource({"2024, T3, 0.064, 5", "2024, T3, 0.032, 4", "2024, O, 0.064, 1"})
  void the_least_bend_radius_is_never_below_the_handbooks_upper_figure(
      String alloy, String temper, double thicknessIn, double upperRadiusOverThickness) {
    assertNeverBelow(alloy, temper, thicknessIn, upperRadiusOverThickness);
  }

  /** Aluminum Association, Aluminum Design Manual (2005), table 3-1, 90 degree cold bends. */
  @ParameterizedTest
  @CsvSource({
    "2024, O, 0.0625, 0",
    "2024, O, 0.125, 0.5",
    "2024, T3, 0.03125, 3",
    "2024, T3, 0.0625, 4",
    "2024, T3, 0.125, 5",
    "5052, O, 0.125, 0.5",
    "5052, H32, 0.0625, 1",
    "5052, H32, 0.125, 1.5",
    "5052, H38, 0.125, 3",
    "3003, H14, 0.125, 1",
    "6061, T6, 0.0625, 1.5",
    "6061, T4, 0.125, 1.5"
  })
  void nor_below_the_aluminum_associations_figure(
      String alloy, String temper, double thicknessIn, double radiusOverThickness) {
    assertNeverBelow(alloy, temper, thicknessIn, radiusOverThickness);
  }

  private void assertNeverBelow(
      String alloy, String temper, double thicknessIn, double radiusOverThickness) {
    double mm = thicknessIn * 25.4;
    Sourced radius = Objects.requireNonNull(library.metal(alloy, temper, mm).minBendRadiusMm());
    // The table is stored in mm to three places, so a thickness may fall 0.0005 mm off its row.
    assertThat(radius.value()).isGreaterThanOrEqualTo(radiusOverThickness * mm - 0.01);
    assertThat(radius.source()).isNotBlank();
  }

  /** BS 3737:1964 as tabled by engineeringtoolbox.com: 20 SWG is 0.036 in, 0.914 mm. */
  @Test
  void a_thickness_may_be_a_gauge_number_or_inches() {
    assertThat(library.thickness("20 SWG").orElseThrow().mm()).isCloseTo(0.914, within(0.0005));
    assertThat(library.thickness("0.036 in").orElseThrow().mm()).isCloseTo(0.9144, within(1e-9));
    assertThat(library.thickness("1.20").orElseThrow().mm()).isEqualTo(1.2);
    assertThat(library.thickness("1.20").orElseThrow().written()).isEqualTo("1.20");
  }

  @ParameterizedTest
  @ValueSource(strings = {"thick", "1,2", "99 SWG", "NaN", "1.2 cm", "-1", "1e3", "", " 1"})
  void a_thickness_written_otherwise_is_not_guessed(String written) {
    assertThat(library.thickness(written)).isEmpty();
  }

  /** ASTM B209 sheet minimum, as shipped: 15 % from 0.53 to 3.25 mm, 12 % below. */
  @Test
  void elongation_is_the_minimum_for_the_thickness() {
    Sourced thin = Objects.requireNonNull(library.metal("2024", "T3", 0.4).elongationPct());
    Sourced thick = Objects.requireNonNull(library.metal("2024", "T3", 1.2).elongationPct());
    assertThat(thin.value()).isEqualTo(12);
    assertThat(thick.value()).isEqualTo(15);
  }

  /** n of 6061-O, 0.20: the shipped table, which has it from a public list of exponents. */
  @Test
  void the_uniform_strain_is_the_hardening_exponent_and_keeps_its_mark() {
    Sourced uniform = Objects.requireNonNull(library.metal("6061", "O", 1).uniformStrain());
    assertThat(uniform.value()).isEqualTo(0.2);
    assertThat(uniform.fromMemory()).isTrue();
    assertThat(library.metal("2024", "T3", 1).uniformStrain())
        .isNotNull()
        .extracting(Sourced::fromMemory)
        .isEqualTo(false);
    assertThat(library.metal("2024", "T8", 1).uniformStrain()).isNull();
  }

  /** The row of 5052-O has n 0.13, and a note that the pair is not to be used for strain limits. */
  @Test
  void an_exponent_that_its_own_note_sets_aside_is_not_used() {
    assertThat(library.materials("5052"))
        .anySatisfy(row -> assertThat(row.nValue()).isEqualTo(0.13));
    assertThat(library.metal("5052", "O", 1).uniformStrain())
        .isNotNull()
        .extracting(Sourced::value)
        .isNotEqualTo(0.13);
  }

  @Test
  void an_alloy_that_no_table_has_stays_unknown() {
    assertThat(library.metal("unheard-of", "T9", 1).isUnknown()).isTrue();
  }

  @Test
  void a_value_recalled_from_memory_says_so() {
    Sourced density = Objects.requireNonNull(library.metal("6061", "T4", 1).densityKgM3());
    assertThat(density.fromMemory()).isTrue();
  }
}
