package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every formula key stands in a class comment and in the method page, and no other key does. */
class FormulaKeysTest {

  private static final Pattern KEY = Pattern.compile("FM-[A-Z]+");
  private static final Path SOURCES = Path.of("src/main/java/dev/flangewright/forming");
  private static final Path METHOD = Path.of("docs/method.md");

  @Test
  void every_key_is_in_a_class_comment() throws IOException {
    var found = new TreeSet<String>();
    try (var files = Files.list(SOURCES)) {
      for (var file : files.filter(f -> !f.endsWith("Formula.java")).toList()) {
        found.addAll(keysIn(comments(Files.readString(file))));
      }
    }
    assertThat(found).isEqualTo(keys());
  }

  @Test
  void every_key_has_its_heading_in_the_method_page() throws IOException {
    var headings =
        Files.readAllLines(METHOD).stream()
            .filter(line -> line.startsWith("#"))
            .collect(Collectors.joining("\n"));
    assertThat(keysIn(headings)).isEqualTo(keys());
    assertThat(keysIn(Files.readString(METHOD))).isEqualTo(keys());
  }

  @Test
  void every_formula_has_a_title_of_its_own() {
    assertThat(Arrays.stream(Formula.values()).map(Formula::title))
        .doesNotHaveDuplicates()
        .allSatisfy(title -> assertThat(title).matches("[A-Z][a-z' ]{4,}.*"));
  }

  private static Set<String> keys() {
    return Arrays.stream(Formula.values())
        .map(Formula::key)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> keysIn(String text) {
    return KEY.matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String comments(String source) {
    return Pattern.compile("/\\*\\*.*?\\*/", Pattern.DOTALL)
        .matcher(source)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.joining("\n"));
  }
}
