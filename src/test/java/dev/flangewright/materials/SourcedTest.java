package dev.flangewright.materials;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a source reads beside a figure. */
class SourcedTest {

  @ParameterizedTest
  @CsvSource({
    "'A handbook, table 5 (https://example.org/a?b=1)', read, 'A handbook, table 5; read'",
    "https://example.org/page, read, example.org; read",
    "'A standard', memory, 'A standard; from memory: check before relying on it'",
    "'certificate 12345, entered by lead on 3 May 2026', certificate,"
        + " 'certificate 12345, entered by lead on 3 May 2026'"
  })
  void a_source_is_named_without_its_address(String source, String knownBy, String said) {
    assertThat(new Sourced(1, source, knownBy).said()).isEqualTo(said);
  }
}
