package dev.flangewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CanonicalJsonTest {

  /** RFC 8785, section 3.2.2: the member "string" of its sample, and what becomes of it. */
  @Test
  void a_string_is_escaped_as_in_the_sample_of_the_standard() {
    assertThat(CanonicalJson.of("\u20ac$\017\nA'B\"\\\\\"/"))
        .isEqualTo("\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
  }

  /** RFC 8785, section 3.2.3: the order of the names of its sample, by UTF-16 units. */
  @Test
  void members_stand_in_the_order_of_the_sample_of_the_standard() {
    Map<String, String> sample = new LinkedHashMap<>();
    sample.put("\u20ac", "Euro Sign");
    sample.put("\r", "Carriage Return");
    sample.put("\ufb33", "Hebrew Letter Dalet With Dagesh");
    sample.put("1", "One");
    sample.put("\ud83d\ude00", "Emoji: Grinning Face");
    sample.put("\u0080", "Control");
    sample.put("\u00f6", "Latin Small Letter O With Diaeresis");
    assertThat(CanonicalJson.of(sample))
        .isEqualTo(
            "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                + "\"\ud83d\ude00\":\"Emoji: Grinning Face\","
                + "\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
  }

  /** RFC 8785, section 3.2.2: null and lists of the sample, without blanks. */
  @Test
  void lists_and_what_is_missing_have_no_blanks() {
    assertThat(CanonicalJson.of(List.of(56L, "d", Map.of()))).isEqualTo("[56,\"d\",{}]");
    assertThat(CanonicalJson.of(null)).isEqualTo("null");
  }

  @Test
  void half_of_a_pair_of_surrogates_is_replaced_as_it_has_no_bytes() {
    assertThat(CanonicalJson.of("a\ud83d")).isEqualTo("\"a\ufffd\"");
  }
}
