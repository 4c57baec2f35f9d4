package dev.flangewright.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.testing.DatabaseTest;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.springframework.beans.factory.annotation.Autowired;

/** The rows as the sources have them, against what the migration has laid down. */
@DatabaseTest
class ShippedRowsTest {

  @Autowired MaterialLibrary library;

  @ParameterizedTest
  @CsvFileSource(resources = "heat-treatment.csv", numLinesToSkip = 1)
  void every_heat_treatment_is_there_with_its_source(
      String alloys,
      String step,
      String appliesTo,
      Double low,
      Double high,
      String unit,
      String source,
      String knownBy,
      String note) {
    assertThat(library.heatTreatments(""))
        .contains(
            new HeatTreatment(alloys, step, appliesTo, low, high, unit, source, knownBy, note));
    assertThat(source).isNotBlank();
    assertThat(knownBy).isIn("read", "memory");
  }

  @ParameterizedTest
  @CsvFileSource(resources = "n-k-derived.csv", numLinesToSkip = 1)
  void every_computed_exponent_is_there_and_fits_its_strengths(
      String alloy,
      String temper,
      double proof,
      double uts,
      double n,
      double k,
      double check,
      String source,
      String knownBy) {
    assertThat(library.hardening(alloy))
        .contains(new HardeningRow(alloy, temper, proof, uts, n, k, check, source, knownBy));
    assertThat(source).isNotBlank();
    assertThat(knownBy).startsWith("computed, not published");
    // Considère: the greatest load of σ = K·ε^n is at ε = n, engineering stress K·n^n·e^−n.
    assertThat(k * Math.pow(n, n) * Math.exp(-n)).isCloseTo(uts, within(1.5));
    // 0.2 % proof: total strain 0.002 + Y/E, E of aluminium about 70 GPa; n and K are rounded.
    double strain = Math.log1p(0.002 + proof / 70_000);
    assertThat(k * Math.pow(strain, n)).isCloseTo(proof, within(0.02 * proof));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "sheet-tolerances.csv", numLinesToSkip = 1)
  void every_tolerance_is_there_with_its_source(
      String standard,
      String group,
      Double over,
      Double upto,
      String width,
      Double tolerance,
      String source,
      String knownBy,
      String note) {
    assertThat(library.sheetTolerances())
        .contains(
            new SheetTolerance(
                standard, group, over, upto, width, tolerance, source, knownBy, note));
    assertThat(source).isNotBlank();
  }

  @Test
  void no_row_is_there_twice_or_from_elsewhere() {
    assertThat(library.heatTreatments("")).hasSize(59).doesNotHaveDuplicates();
    assertThat(library.hardening("")).hasSize(24).doesNotHaveDuplicates();
    assertThat(library.sheetTolerances()).hasSize(68).doesNotHaveDuplicates();
  }

  /** MIL-H-6088G / AMS 2770 refrigeration table and a shop rule, all from memory. */
  @Test
  void a_quenched_alloy_has_its_forming_window_and_says_that_it_is_from_memory() {
    FormingWindow window = library.formingWindow("Alclad 2024").orElseThrow();
    assertThat(Objects.requireNonNull(window.severeToMin()).value()).isEqualTo(30);
    assertThat(Objects.requireNonNull(window.severeFromMin()).value()).isEqualTo(10);
    assertThat(Objects.requireNonNull(window.freezeWithinMin()).value()).isEqualTo(15);
    assertThat(window.storage())
        .extracting(FormingWindow.Storage::atOrBelowC, cold -> cold.longestDays().value())
        .containsExactly(tuple(-12, 1), tuple(-18, 30), tuple(-23, 90));
    assertThat(window.rows()).allMatch(row -> row.knownBy().equals("memory"));
    assertThat(window.severeToMin().fromMemory()).isTrue();
  }

  @Test
  void where_no_row_tells_the_time_at_room_temperature_it_is_not_guessed() {
    FormingWindow window = library.formingWindow("7075").orElseThrow();
    assertThat(window.severeToMin()).isNull();
    assertThat(Objects.requireNonNull(window.freezeWithinMin()).value()).isEqualTo(30);
    assertThat(library.formingWindow("5052")).isEmpty();
  }

  /** The shipped tables: 2024-O has no published n; 5052-O's is set aside by its own note. */
  @Test
  void a_computed_exponent_fills_what_nobody_published() {
    Sourced filled = Objects.requireNonNull(library.metal("2024", "O", 1).uniformStrain());
    assertThat(filled.value()).isEqualTo(0.26);
    assertThat(filled.knownBy()).startsWith("computed");
    Sourced instead = Objects.requireNonNull(library.metal("5052", "O", 1).uniformStrain());
    assertThat(instead.value()).isEqualTo(0.235);
    assertThat(instead.fromMemory()).as("its strengths are from memory").isTrue();
  }

  /** n 0.16 of 2024-T3 is published (read); the computed one is 0.157. */
  @Test
  void a_published_exponent_comes_before_the_computed_one() {
    Sourced published = Objects.requireNonNull(library.metal("2024", "T3", 1).uniformStrain());
    assertThat(published.value()).isEqualTo(0.16);
    assertThat(published.knownBy()).isEqualTo("read");
  }

  private static org.assertj.core.groups.Tuple tuple(double celsius, double days) {
    return org.assertj.core.api.Assertions.tuple(celsius, days);
  }
}
