package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * A computed table of the method page, between two marker comments. The page must show what the
 * calculation gives; with {@code -Dflangewright.tables=docs/method.md} it is written there.
 */
final class WrittenTable {

  private static final Path PAGE = Path.of("docs/method.md");

  private WrittenTable() {}

  static void check(String name, List<String> lines) throws IOException {
    String begin = "<!-- computed: " + name + " -->\n\n";
    String end = "\n<!-- end of " + name + " -->";
    String table = String.join("\n", lines) + "\n";
    String ordered = System.getProperty("flangewright.tables");
    if (ordered != null) {
      var page = Path.of(ordered);
      Files.writeString(page, replaced(Files.readString(page), begin, table, end));
    }
    assertThat(between(Files.readString(PAGE), begin, end))
        .as("table %s of %s; mvn test -Dtest=... -Dflangewright.tables=%s", name, PAGE, PAGE)
        .isEqualTo(table);
  }

  /** A number with a point, whatever the country, and no sign on a zero. */
  static String number(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0[.0]*") ? text.substring(1) : text;
  }

  /** As {@link #number}, with a sign. */
  static String signed(double value, int decimals) {
    String text = number(value, decimals);
    return text.startsWith("-")
        ? "−" + text.substring(1)
        : text.matches("0[.0]*") ? text : "+" + text;
  }

  private static String replaced(String page, String begin, String table, String end) {
    String old = between(page, begin, end);
    return page.replace(begin + old + end, begin + table + end);
  }

  private static String between(String page, String begin, String end) {
    int from = page.indexOf(begin);
    int to = page.indexOf(end);
    assertThat(from).as("marker %s", begin.strip()).isNotNegative();
    assertThat(to).as("marker %s", end.strip()).isGreaterThan(from);
    return page.substring(from + begin.length(), to);
  }
}
