package dev.flangewright.parts.exchange;

import java.util.Optional;

/** What a text cell may hold; anything else, HTML included, is data and is only ever shown. */
final class CellText {

  private static final String BEGINS_A_FORMULA = "=+-@\t\r";

  private CellText() {}

  /** Why a text is refused; empty if it is not. */
  static Optional<String> refusal(String column, String text, int longest, boolean mayBreak) {
    if (!text.isEmpty() && BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0) {
      return Optional.of(
          column
              + " must not begin with = + - @ or a tab: a spreadsheet would take it for a formula");
    }
    if (!text.equals(text.strip())) {
      return Optional.of(column + " must not begin or end with a blank");
    }
    if (text.chars().anyMatch(c -> isControl(c) && !(mayBreak && (c == '\n' || c == '\r')))) {
      return Optional.of(column + " must not hold control characters");
    }
    if (text.length() > longest) {
      return Optional.of(
          column + " must have at most " + longest + " characters, not " + text.length());
    }
    return Optional.empty();
  }

  /** Also the invisible ones that turn the direction of writing round, and Unicode's line ends. */
  private static boolean isControl(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }
}
