package dev.flangewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.core.io.ClassPathResource;

/**
 * Inks against their ground, by the contrast ratio of WCAG 2.2 (definitions "contrast ratio" and
 * "relative luminance"): 4.5 for text (success criterion 1.4.3), 3 for what must be seen to be used
 * (1.4.11).
 */
class ContrastTest {

  private static final List<String> GROUNDS = List.of("paper", "wash");
  private static final List<String> INKS =
      List.of("ink", "quiet", "blue", "green", "vermilion", "purple", "ochre");
  private static final Pattern COLOUR = Pattern.compile("--([a-z]+): #([0-9a-f]{6});");

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark"})
  void every_ink_can_be_read_on_paper_and_on_wash(String scheme) throws IOException {
    Map<String, String> colours = colours(scheme);
    assertThat(colours).containsKeys(INKS.toArray(String[]::new));
    for (String ground : GROUNDS) {
      for (String ink : INKS) {
        assertThat(ratio(colours.get(ink), colours.get(ground)))
            .as("%s on %s, %s", ink, ground, scheme)
            .isGreaterThanOrEqualTo(4.5);
      }
      assertThat(ratio(colours.get("edge"), colours.get(ground)))
          .as("edge on %s, %s", ground, scheme)
          .isGreaterThanOrEqualTo(3);
    }
  }

  private static Map<String, String> colours(String scheme) throws IOException {
    String css =
        new ClassPathResource("static/css/tokens.css").getContentAsString(StandardCharsets.UTF_8);
    String[] blocks = css.split("@media", -1);
    Map<String, String> colours = new HashMap<>();
    COLOUR
        .matcher(scheme.equals("light") ? blocks[0] : blocks[1])
        .results()
        .forEach(found -> colours.put(found.group(1), found.group(2)));
    return colours;
  }

  private static double ratio(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String hex) {
    return 0.2126 * linear(hex, 0) + 0.7152 * linear(hex, 2) + 0.0722 * linear(hex, 4);
  }

  private static double linear(String hex, int at) {
    double c = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
