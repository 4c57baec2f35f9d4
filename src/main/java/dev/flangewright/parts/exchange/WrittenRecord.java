package dev.flangewright.parts.exchange;

import java.util.List;
import java.util.Optional;

/**
 * How one record stands in the file, learnt by laying its parsed cells over the text.
 *
 * @param quoted bit i is set when the i-th cell stands in quotation marks
 * @param lineEnd what ends the record; empty at the end of the file
 */
record WrittenRecord(int quoted, String lineEnd) {

  private static final char QUOTE = '"';

  /**
   * @param text begins with the record and reaches at least to its end
   * @return empty if the text is not what RFC 4180 writes for these cells
   */
  static Optional<WrittenRecord> of(CharSequence text, List<String> cells) {
    int at = 0;
    int quoted = 0;
    for (int i = 0; i < cells.size(); i++) {
      boolean inMarks = at < text.length() && text.charAt(at) == QUOTE;
      String written = inMarks ? inMarks(cells.get(i)) : cells.get(i);
      if (!startsWith(text, at, written) || !inMarks && written.indexOf(QUOTE) >= 0) {
        return Optional.empty();
      }
      at += written.length();
      quoted |= inMarks ? 1 << i : 0;
      if (i + 1 < cells.size() && !startsWith(text, at++, ",")) {
        return Optional.empty();
      }
    }
    return lineEnd(text, at).isEmpty() && at < text.length()
        ? Optional.empty()
        : Optional.of(new WrittenRecord(quoted, lineEnd(text, at)));
  }

  static String inMarks(String cell) {
    return QUOTE + cell.replace("\"", "\"\"") + QUOTE;
  }

  /** Whether a cell can only be written in quotation marks. */
  static boolean needsMarks(String cell) {
    return cell.chars().anyMatch(c -> c == QUOTE || c == ',' || c == '\n' || c == '\r');
  }

  private static String lineEnd(CharSequence text, int at) {
    if (startsWith(text, at, "\r\n")) {
      return "\r\n";
    }
    boolean ends = startsWith(text, at, "\n") || startsWith(text, at, "\r");
    return ends ? text.subSequence(at, at + 1).toString() : "";
  }

  private static boolean startsWith(CharSequence text, int at, String expected) {
    if (at + expected.length() > text.length()) {
      return false;
    }
    for (int i = 0; i < expected.length(); i++) {
      if (text.charAt(at + i) != expected.charAt(i)) {
        return false;
      }
    }
    return true;
  }
}
