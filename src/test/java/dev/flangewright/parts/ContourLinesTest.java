package dev.flangewright.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContourLinesTest {

  private final Faults faults = new Faults();

  @Test
  void a_contour_comes_back_as_it_was_typed() {
    String typed = "1, 0.00, 10.50, 90\n2, 40.0, 12, 88.5, 22.0";
    WrittenStations stations = ContourLines.read(typed, faults);
    assertThat(faults.list()).isEmpty();
    assertThat(stations.list().stream().map(ContourLines::line)).containsExactly(typed.split("\n"));
  }

  @Test
  void blanks_round_a_figure_and_empty_lines_count_for_nothing() {
    WrittenStations stations = ContourLines.read("\n  1,0,0 , 90\r\n\n2,10,0,90,\n", faults);
    assertThat(faults.list()).isEmpty();
    assertThat(stations.lines()).isEqualTo("1,0,0,90,\n2,10,0,90,");
  }

  @Test
  void every_bad_line_is_named_and_not_only_the_first() {
    ContourLines.read("1, 0, 0, 90\n2, 10, 0\n3, 20, zero, 90\n4, 30, 0, 90", faults);
    assertThat(faults.list())
        .extracting(Fault::field, Fault::reason)
        .satisfiesExactly(
            fault -> assertThat(fault.toString()).contains("stations", "line 2", "2, 10, 0"),
            fault -> assertThat(fault.toString()).contains("stations", "line 3", "y_mm", "zero"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.5, 0, 0, 90 | whole number",
        "01, 0, 0, 90 | whole number",
        "1, 200000, 0, 90 | must be from -100000 to 100000",
        "1, 0, 0, 165 | must be above 0 and below 165",
        "1, 0, 0, NaN | plain decimal number",
        "1, 0, 0, =90 | plain decimal number",
        "1, 0, 0, 90, 0 | must be above 0 and at most 500",
        "1, 0, 0, 90, 20, 3 | must be station, x, y"
      })
  void a_figure_out_of_its_range_is_refused_with_the_range(String line, String reason) {
    ContourLines.read(line, faults);
    assertThat(faults.list()).hasSize(1);
    assertThat(faults.list().get(0).sentence()).contains("line 1").contains(reason);
  }

  @Test
  void more_lines_than_a_contour_may_have_are_not_even_read() {
    ContourLines.read("1, 0, 0, 90\n".repeat(2001), faults);
    assertThat(faults.list()).hasSize(1);
  }
}
