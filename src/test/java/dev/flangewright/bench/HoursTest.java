package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.people.Refused;
import org.junit.jupiter.api.Test;

class HoursTest {

  @Test
  void hours_are_read_with_a_point_or_a_comma() {
    assertThat(Hours.read("1.5")).isEqualTo(1.5);
    assertThat(Hours.read(" 1,5 ")).isEqualTo(1.5);
    assertThat(Hours.read("  ")).isNull();
  }

  @Test
  void what_is_no_number_is_refused() {
    assertThatThrownBy(() -> Hours.read("an hour"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("hours");
  }

  @Test
  void hours_are_said_in_hours_and_minutes() {
    assertThat(Hours.inWords(0)).isEqualTo("0 h");
    assertThat(Hours.inWords(1 + 20 / 60.0)).isEqualTo("1 h 20");
    assertThat(Hours.inWords(0.999)).isEqualTo("1 h");
    assertThat(Hours.inWords(12.1)).isEqualTo("12 h 06");
  }
}
