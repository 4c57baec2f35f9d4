package dev.flangewright.parts;

import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingInput;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads written fields one after another and keeps all that is wrong with them. What it hands back
 * for a field with a fault is a stand-in: {@link #refuseIfAny} must come before it is used.
 */
public final class Faults {

  private static final Written STAND_IN = new Written("0");

  private static final String FORMULA_STARTS = "=+-@";

  private final List<Fault> list = new ArrayList<>();

  public void add(String field, String value, String reason) {
    list.add(new Fault(field, value, reason));
  }

  public List<Fault> list() {
    return List.copyOf(list);
  }

  public boolean isEmpty() {
    return list.isEmpty();
  }

  /**
   * @throws DrawingRefused with every fault, if there is one
   */
  public void refuseIfAny() {
    if (!list.isEmpty()) {
      throw new DrawingRefused(list());
    }
  }

  /** A text that must be there. */
  public String text(String field, String value, int longest) {
    if (value.isEmpty()) {
      add(field, value, "it must not be empty");
    }
    return perhaps(field, value, longest);
  }

  /** A text that may be empty. */
  public String perhaps(String field, String value, int longest) {
    if (value.length() > longest) {
      add(field, value, "it may have at most " + longest + " characters");
    }
    if (value.codePoints().anyMatch(Faults::isUnseen)) {
      add(field, value, "it must not hold line breaks or other unseen characters");
    }
    if (!value.isEmpty() && FORMULA_STARTS.indexOf(value.charAt(0)) >= 0) {
      add(field, value, "it must not begin with = + - or @, as a spreadsheet's formula does");
    }
    if (!value.equals(value.strip())) {
      add(field, value, "it must not begin or end with a space");
    }
    return value;
  }

  /** A plain decimal number in the range of a forming input. */
  public Written number(String field, String value, FormingInput range) {
    try {
      Written written = new Written(value);
      within(field, value, written.value(), range);
      return written;
    } catch (NumberFormatException unreadable) {
      add(field, value, "it must be a plain decimal number with a point, as 12.5");
      return STAND_IN;
    }
  }

  /** As {@link #number}, where the field may be empty. */
  public @Nullable Written perhapsNumber(String field, String value, FormingInput range) {
    return value.isEmpty() ? null : number(field, value, range);
  }

  /** A whole number from 1; null where the field is empty, and as the stand-in. */
  @Nullable Integer perhapsCount(String field, String value, int most) {
    if (value.isEmpty()) {
      return null;
    }
    if (value.matches("[0-9]{1,9}")) {
      int count = Integer.parseInt(value);
      if (count >= 1 && count <= most) {
        return count;
      }
    }
    add(field, value, "it must be a whole number from 1 to " + most);
    return null;
  }

  void within(String field, String value, double number, FormingInput range) {
    try {
      range.check(number);
    } catch (FormingException outside) {
      add(field, value, "it must be " + range.rangeText());
    }
  }

  /** Also those that turn the direction of writing round. */
  private static boolean isUnseen(int c) {
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
