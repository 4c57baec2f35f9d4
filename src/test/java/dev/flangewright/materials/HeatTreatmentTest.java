package dev.flangewright.materials;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** For which alloys a row of the heat treatments stands. */
class HeatTreatmentTest {

  private static HeatTreatment row(String alloys, String step, String appliesTo, Double high) {
    return new HeatTreatment(alloys, step, appliesTo, null, high, "", "a book", "memory", null);
  }

  @ParameterizedTest
  @CsvSource({
    "'2014, 2024, 2219', 2024, true",
    "'2014, 2024, 2219', Alclad 2024, true",
    "'2014, 2024, 2219', 2017, false",
    "'5251, 5154A', 5154a, true",
    "'5251, 5154A', 5154, false",
    "6082-type (BS L113), 6082, true",
    "2024 rivets, 2024, false",
    "all aluminium, 2024, false"
  })
  void a_list_names_each_of_its_alloys_and_no_other(String alloys, String alloy, boolean named) {
    assertThat(row(alloys, "solution", null, null).names(alloy)).isEqualTo(named);
  }

  @ParameterizedTest
  @CsvSource({
    "wrought sheet, 2024, true",
    "alclad, 2024, false",
    "alclad, Alclad 2024, true",
    "4130, 2024, false",
    "2024 rivets, 2024, false"
  })
  void a_group_takes_in_what_may_be_in_it(String alloys, String alloy, boolean taken) {
    assertThat(row(alloys, "rule", null, null).isForAGroupWith(alloy)).isEqualTo(taken);
  }

  @Test
  void storage_that_names_no_temperature_or_no_days_is_no_limit() {
    String cold = "refrigerated storage in AQ/W";
    FormingWindow window =
        FormingWindow.of(
                "2024",
                List.of(
                    row("2024", cold, "at or below 0 F (-18 C)", 30.0),
                    row("2024", cold, "in the yard", 2.0),
                    row("2024", cold, "at or below -10 F (-23 C)", null)))
            .orElseThrow();
    assertThat(window.storage())
        .containsExactly(new FormingWindow.Storage(-18, new Sourced(30, "a book", "memory")));
    assertThat(window.severeToMin()).isNull();
  }
}
