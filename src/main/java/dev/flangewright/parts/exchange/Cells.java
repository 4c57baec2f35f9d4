package dev.flangewright.parts.exchange;

import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingInput;
import dev.flangewright.parts.Written;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Takes the cells of one row and notes what is wrong with them. A refused cell yields a stand-in,
 * so that all of a row's problems are found; use what was taken only if {@link #allGood()}.
 */
final class Cells {

  private static final Written STAND_IN = new Written("0");
  private static final Pattern WHOLE = Pattern.compile("0|[1-9]\\d{0,8}");

  private final CsvRow row;
  private final Problems problems;
  private boolean good = true;

  Cells(CsvRow row, Problems problems) {
    this.row = row;
    this.problems = problems;
  }

  boolean allGood() {
    return good;
  }

  void refuse(String column, String reason) {
    good = false;
    problems.add(row.file(), row.line(), column, row.cell(column), reason);
  }

  /** A text of one line that must not be empty. */
  String name(String column, int longest) {
    if (row.cell(column).isEmpty()) {
      refuse(column, column + " must not be empty");
    }
    return text(column, longest, false);
  }

  /** A text that may be empty and may break its line. */
  String words(String column, int longest) {
    return text(column, longest, true);
  }

  private String text(String column, int longest, boolean mayBreak) {
    String text = row.cell(column);
    CellText.refusal(column, text, longest, mayBreak).ifPresent(why -> refuse(column, why));
    return text;
  }

  Written number(String column, FormingInput input) {
    String text = row.cell(column);
    try {
      Written number = new Written(text);
      if (!isWithin(input, number.value())) {
        refuse(column, column + " must be " + input.rangeText());
      }
      return number;
    } catch (NumberFormatException e) {
      refuse(column, notPlain(column, text, input));
      return STAND_IN;
    }
  }

  @Nullable Written numberOrNone(String column, FormingInput input) {
    return row.cell(column).isEmpty() ? null : number(column, input);
  }

  int whole(String column) {
    String text = row.cell(column);
    if (WHOLE.matcher(text).matches()) {
      return Integer.parseInt(text);
    }
    refuse(column, column + " must be a whole number from 0 to 999999999, without leading zeros");
    return 0;
  }

  <T> T choice(String column, Map<String, T> words) {
    T chosen = words.get(row.cell(column));
    if (chosen != null) {
      return chosen;
    }
    refuse(
        column,
        column + " must be one of " + String.join(", ", words.keySet()) + ", in small letters");
    return words.values().iterator().next();
  }

  static boolean isWithin(FormingInput input, double value) {
    try {
      input.check(value);
      return true;
    } catch (FormingException e) {
      return false;
    }
  }

  private static String notPlain(String column, String text, FormingInput input) {
    if (text.isEmpty()) {
      return column + " must not be empty";
    }
    if ("=+@".indexOf(text.charAt(0)) >= 0) {
      return column + " must be a number, not a formula or a sign";
    }
    String unit = column.endsWith("_deg") ? "degrees" : "millimetres";
    return column
        + " must be a plain number "
        + input.rangeText()
        + ", in "
        + unit
        + ", with a point and without a unit, such as 12.50";
  }
}
