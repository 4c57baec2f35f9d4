package dev.flangewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Conventions of the pages that the content-security policy and plain browsers rely on. */
class TemplatesTest {

  private static final Path TEMPLATES = Path.of("src/main/resources/templates");
  private static final Pattern INLINE =
      Pattern.compile(
          "\\s(th:)?(style|on[a-z]+)=|<style|<script(?![^>]*src=)", Pattern.CASE_INSENSITIVE);
  private static final Pattern NOWHERE =
      Pattern.compile("<a\\b(?![^>]*href=)[^>]*>|<a\\b[^>]*\\bhref=\"(#|javascript:[^\"]*)?\"");

  @Test
  void no_page_carries_inline_style_or_script() throws IOException {
    assertThat(linesMatching(INLINE)).isEmpty();
  }

  @Test
  void every_link_leads_somewhere() throws IOException {
    assertThat(linesMatching(NOWHERE)).isEmpty();
  }

  private static List<String> linesMatching(Pattern pattern) throws IOException {
    try (Stream<Path> files = Files.walk(TEMPLATES)) {
      List<Path> pages = files.filter(file -> file.toString().endsWith(".html")).toList();
      assertThat(pages).isNotEmpty();
      return pages.stream().flatMap(page -> linesMatching(page, pattern)).toList();
    }
  }

  private static Stream<String> linesMatching(Path page, Pattern pattern) {
    try {
      return Files.readString(page)
          .lines()
          .filter(line -> pattern.matcher(line).find())
          .map(line -> page + ": " + line.strip());
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
