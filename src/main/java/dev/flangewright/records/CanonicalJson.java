package dev.flangewright.records;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Writes JSON in the one form that RFC 8785 (JSON Canonicalization Scheme) gives it: no blanks,
 * members in the order of their names, the shortest escapes. Of numbers only whole ones are
 * written, which that scheme writes as digits.
 */
final class CanonicalJson {

  private static final String ESCAPED = "\b\t\n\f\r\"\\";
  private static final String ESCAPES = "btnfr\"\\";

  private final StringBuilder out = new StringBuilder();

  private CanonicalJson() {}

  /**
   * @param value a string, a {@code Long}, null, a list or a map of these
   */
  static String of(@Nullable Object value) {
    CanonicalJson json = new CanonicalJson();
    json.write(value);
    return json.out.toString();
  }

  private void write(@Nullable Object value) {
    if (value == null || value instanceof Long) {
      out.append(value);
    } else if (value instanceof String text) {
      text(text);
    } else if (value instanceof List<?> list) {
      list(list);
    } else if (value instanceof Map<?, ?> object) {
      object(object);
    } else {
      throw new IllegalArgumentException(value.getClass() + " has no canonical form here");
    }
  }

  private void list(List<?> list) {
    String before = "[";
    for (Object one : list) {
      out.append(before);
      write(one);
      before = ",";
    }
    out.append(list.isEmpty() ? "[]" : "]");
  }

  /** A string compares by its UTF-16 units, as the scheme wants it. */
  private void object(Map<?, ?> members) {
    Map<String, @Nullable Object> sorted = new TreeMap<>();
    members.forEach((name, value) -> sorted.put((String) name, value));
    String before = "{";
    for (Map.Entry<String, @Nullable Object> member : sorted.entrySet()) {
      out.append(before);
      text(member.getKey());
      out.append(':');
      write(member.getValue());
      before = ",";
    }
    out.append(sorted.isEmpty() ? "{}" : "}");
  }

  private void text(String text) {
    out.append('"');
    text.codePoints().forEach(this::sign);
    out.append('"');
  }

  /** Half of a pair of surrogates is no character: there is no UTF-8 for it. */
  private void sign(int sign) {
    int escape = ESCAPED.indexOf(sign);
    if (escape >= 0) {
      out.append('\\').append(ESCAPES.charAt(escape));
    } else if (sign < ' ') {
      out.append(String.format("\\u%04x", sign));
    } else if (sign >= Character.MIN_SURROGATE && sign <= Character.MAX_SURROGATE) {
      out.append('\uFFFD');
    } else {
      out.appendCodePoint(sign);
    }
  }
}
