package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCardTest {

  @ParameterizedTest
  @CsvSource({"1.1,true", "1.3,true", "1.2,true", "1.0999,false", "1.3001,false", "-1.2,false"})
  void a_number_is_right_within_its_tolerance_and_at_its_ends(double measured, boolean right) {
    assertThat(thickness(1.2, 1.1, 1.3).isMetBy(Answer.of(measured))).isEqualTo(right);
  }

  @Test
  void a_tolerance_may_be_open_to_one_side() {
    assertThat(thickness(null, null, 0.5).isMetBy(Answer.of(-3))).isTrue();
    assertThat(thickness(null, null, 0.5).wanted()).isEqualTo("at most 0.5 mm");
    assertThat(thickness(null, 1.0, null).isMetBy(Answer.of(0.9))).isFalse();
    assertThat(thickness(null, 1.0, null).wanted()).isEqualTo("at least 1 mm");
    assertThat(thickness(1.2, 1.1, 1.3).wanted()).isEqualTo("1.2 mm, 1.1 to 1.3 mm");
  }

  @Test
  void yes_is_what_is_wanted() {
    assertThat(CheckCard.yes("No crack").isMetBy(Answer.of(true))).isTrue();
    assertThat(CheckCard.yes("No crack").isMetBy(Answer.of(false))).isFalse();
  }

  @Test
  void a_tolerance_that_makes_no_sense_is_refused() {
    assertThatThrownBy(() -> thickness(1.2, null, null))
        .hasMessageContaining("tolerance is missing");
    assertThatThrownBy(() -> thickness(null, 1.3, 1.1)).hasMessageContaining("smaller number");
    assertThatThrownBy(() -> thickness(1.4, 1.1, 1.3)).hasMessageContaining("nominal");
    assertThatThrownBy(() -> thickness(null, Double.NaN, 1.3)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new CheckCard("No crack", CheckKind.YES_NO, "mm", null, null, null))
        .isInstanceOf(Refused.class);
  }

  @Test
  void a_photo_is_what_is_wanted_of_a_check_that_asks_for_one() {
    CheckCard edge = new CheckCard("Edge polished", CheckKind.PHOTO, "", null, null, null);
    assertThat(edge.wanted()).isEqualTo("a photo");
    assertThat(edge.isMetBy(Answer.ofPhoto(12))).isTrue();
    assertThat(Answer.ofPhoto(12).inWords("")).isEqualTo("photo 12");
    assertThatThrownBy(() -> new CheckCard("Edge", CheckKind.PHOTO, "mm", null, null, null))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new Answer(true, null, 12L)).isInstanceOf(Refused.class);
  }

  @Test
  void an_answer_is_read_as_it_is_typed() {
    assertThat(Answer.read(" 1,25 ")).isEqualTo(Answer.of(1.25));
    assertThat(Answer.read("−0.5")).isEqualTo(Answer.of(-0.5));
    assertThat(Answer.read("no")).isEqualTo(Answer.of(false));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "about 1", "NaN", "1e999", "maybe"})
  void an_answer_that_says_nothing_is_refused(String typed) {
    assertThatThrownBy(() -> Answer.read(typed)).isInstanceOf(Refused.class);
  }

  private static CheckCard thickness(
      @Nullable Double nominal, @Nullable Double least, @Nullable Double most) {
    return new CheckCard("Edge thickness", CheckKind.NUMBER, "mm", nominal, least, most);
  }
}
