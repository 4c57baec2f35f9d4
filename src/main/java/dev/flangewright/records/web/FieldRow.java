package dev.flangewright.records.web;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What became of a field, as the page shows it. */
record FieldRow(String field, @Nullable String from, @Nullable String to) {

  /** Longer texts, such as the stations of a contour, stand in the exported file in full. */
  private static final int SHOWN = 160;

  /** {@code "inside bend radius mm"} for {@code insideBendRadiusMm}. */
  public String words() {
    return field
        .replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ")
        .replace('.', ' ')
        .toLowerCase(Locale.ROOT);
  }

  public String fromShown() {
    return shown(from);
  }

  public String toShown() {
    return shown(to);
  }

  private static String shown(@Nullable String value) {
    if (value == null) {
      return "nothing";
    }
    if (value.isEmpty()) {
      return "empty";
    }
    return value.length() > SHOWN ? value.substring(0, SHOWN) + "…" : value;
  }
}
