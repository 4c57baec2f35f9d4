package dev.flangewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SvgTest {

  private static Svg sheet() {
    return Svg.picture("sheet", "drawing", Box.of(100, 50), "A sheet", "Nothing on it");
  }

  @Test
  void a_picture_is_read_out_as_its_title_and_description() {
    Drawn drawn = Drawn.of(sheet().written());
    assertThat(drawn.root().getAttribute("role")).isEqualTo("img");
    assertThat(drawn.root().getAttribute("aria-labelledby")).isEqualTo("sheet-title");
    assertThat(drawn.words()).containsExactly("A sheet", "Nothing on it");
  }

  /** The role img hides its children from assistive technology: WAI-ARIA 1.2, section 5.2.8. */
  @Test
  void a_drawing_with_links_does_not_hide_them_behind_the_role_of_an_image() {
    String svg = Svg.withLinks("s", "drawing", Box.of(1, 1), "t", "d").written();
    assertThat(Drawn.of(svg).root().getAttribute("role")).isEqualTo("group");
  }

  @Test
  void lettering_is_text_and_never_markup() {
    String words = "<script>alert('1')</script> & \"<b>\"\u0000\u0007";
    String svg = sheet().label(new Spot(1, 2), Anchor.MIDDLE, words).title(words).written();
    assertThat(svg).doesNotContain("<script").doesNotContain("<b>");
    assertThat(Drawn.of(svg).words()).contains("<script>alert('1')</script> & \"<b>\"\uFFFD\uFFFD");
  }

  @Test
  void an_attribute_cannot_break_out_of_its_quotes() {
    String svg = sheet().open("a", "href", "/parts/1\" onclick=\"x").written();
    assertThat(Drawn.of(svg).named("a").get(0).getAttribute("href"))
        .isEqualTo("/parts/1\" onclick=\"x");
  }

  @ParameterizedTest
  @ValueSource(strings = {"style", "onclick", "onload"})
  void inline_style_and_script_are_refused(String attribute) {
    assertThatThrownBy(() -> sheet().draw("path", attribute, "x"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(attribute);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e12})
  void a_coordinate_that_is_no_place_on_paper_is_refused(double coordinate) {
    assertThatThrownBy(() -> sheet().draw("circle", "cx", coordinate))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Lines.open(new Spot(0, 0), new Spot(coordinate, 0)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "3.0, 3",
    "1.006, 1.01",
    "-0.001, 0",
    "-0.05, -0.05",
    "-12.5, -12.5",
    "0.1, 0.1",
    "123456.789, 123456.79",
    "-3.999, -4"
  })
  void coordinates_have_two_decimals_at_most(double coordinate, String written) {
    assertThat(Numbers.drawn(coordinate)).isEqualTo(written);
  }

  @Test
  void figures_have_a_true_minus_sign_and_never_a_negative_nought() {
    assertThat(Numbers.percent(-0.0312)).isEqualTo("−3.12 %");
    assertThat(Numbers.percent(0.0999499)).isEqualTo("9.99 %");
    assertThat(Numbers.percent(0.1234)).isEqualTo("12.3 %");
    assertThat(Numbers.figure(-0.001, 1)).isEqualTo("0.0");
    assertThat(Numbers.figure(2400, 0)).isEqualTo("2\u202F400");
  }
}
