package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;

/** The answer to a check: yes or no, or a number in the unit that the check names. */
public record Answer(@Nullable Boolean yes, @Nullable Double number) {

  /**
   * @throws Refused unless it is one of the two, and a number is finite
   */
  public Answer {
    if ((yes == null) == (number == null)) {
      throw Refused.unacceptable("answer is missing: say yes or no, or give the number.");
    }
    if (number != null && !Double.isFinite(number)) {
      throw Refused.unacceptable("answer cannot be read; write a number such as 1.2.");
    }
  }

  public static Answer of(boolean yes) {
    return new Answer(yes, null);
  }

  public static Answer of(double number) {
    return new Answer(null, number);
  }

  /**
   * Reads an answer as typed: {@code yes}, {@code no}, {@code 1.2} or {@code 1,2}.
   *
   * @throws Refused if it is none of these
   */
  public static Answer read(String typed) {
    String clean = typed.strip().replace(',', '.').replace('−', '-');
    if (clean.equals("yes") || clean.equals("no")) {
      return of(clean.equals("yes"));
    }
    try {
      return of(Double.parseDouble(clean));
    } catch (NumberFormatException e) {
      throw Refused.unacceptable("answer cannot be read; write a number such as 1.2.");
    }
  }

  /** {@code "yes"}, {@code "1.2 mm"}. */
  public String inWords(String unit) {
    if (number == null) {
      return Boolean.TRUE.equals(yes) ? "yes" : "no";
    }
    return unit.isEmpty() ? Tolerance.number(number) : Tolerance.number(number) + " " + unit;
  }
}
