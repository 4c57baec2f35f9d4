package dev.flangewright.parts.exchange;

/**
 * One thing that keeps a file from being imported.
 *
 * @param file {@code register.csv} or {@code contours.csv}
 * @param line the line of the file, counted from 1
 * @param column its name in the header; empty when the whole line is meant
 * @param value what stands there, cut short and made visible
 * @param reason what is wrong and what is allowed, as a sentence without its full stop
 */
public record Problem(String file, int line, String column, String value, String reason) {

  private static final int SHOWN = 80;

  public Problem {
    value = shown(value);
  }

  private static String shown(String value) {
    String visible = value.replaceAll("[\\p{Cc}\\p{Cf}]", "\u00b7");
    return visible.length() <= SHOWN ? visible : visible.substring(0, SHOWN) + "\u2026";
  }

  /** The whole in one line, for answers without a table. */
  public String sentence() {
    String where = column.isEmpty() ? "" : ", " + column;
    String what = value.isEmpty() ? "" : " \"" + value + "\"";
    return file + " line " + line + where + what + ": " + reason + ".";
  }
}
