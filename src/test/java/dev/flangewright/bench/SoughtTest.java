package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SoughtTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "TW-F07-S3L 2",
        " tw-f07-s3l   2 ",
        "tw f07 s3l 2",
        "TW-F07-S3L/2",
        "TW-F07-S3L piece 2",
        "TW-F07-S3L Piece2",
        "TW-F07-S3L 02"
      })
  void capitals_blanks_and_the_word_piece_do_not_matter(String typed) {
    assertThat(Sought.readings(typed)).contains(new Sought("TWF07S3L", 2));
  }

  @Test
  void a_part_number_alone_names_no_piece() {
    assertThat(Sought.readings("TW-F07-S3L")).containsExactly(new Sought("TWF07S3L", 0));
  }

  @Test
  void a_figure_behind_a_blank_may_be_part_of_the_part_number_too() {
    assertThat(Sought.readings("TW 12"))
        .containsExactly(new Sought("TW12", 0), new Sought("TW", 12));
  }

  @Test
  void a_number_too_long_for_a_piece_is_none() {
    assertThat(Sought.readings("TW 20260612")).containsExactly(new Sought("TW20260612", 0));
  }
}
