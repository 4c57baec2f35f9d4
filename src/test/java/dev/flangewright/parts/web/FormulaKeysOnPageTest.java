package dev.flangewright.parts.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.forming.Formula;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.ClassPathResource;

class FormulaKeysOnPageTest {

  @Test
  void every_formula_is_explained_on_the_part_sheet_under_its_key() throws IOException {
    String page =
        new ClassPathResource("templates/parts/_formulas.html")
            .getContentAsString(StandardCharsets.UTF_8);
    assertThat(Pattern.compile("id=\"(FM-[A-Z]+)\"").matcher(page).results().map(m -> m.group(1)))
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(Formula.values()).map(Formula::key).toList());
  }
}
