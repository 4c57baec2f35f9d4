package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The answer to a check: yes or no, or a number in the unit that the check names, or a photo.
 *
 * @param photo the identity of a photo of the piece
 */
public record Answer(@Nullable Boolean yes, @Nullable Double number, @Nullable Long photo) {

  /**
   * @throws Refused unless it is one of the three, and a number is finite
   */
  public Answer {
    if (Stream.of(yes, number, photo).filter(Objects::nonNull).count() != 1) {
      throw Refused.unacceptable("answer is missing: say yes or no, give the number or a photo.");
    }
    if (number != null && !Double.isFinite(number)) {
      throw Refused.unacceptable("answer cannot be read; write a number such as 1.2.");
    }
  }

  public static Answer of(boolean yes) {
    return new Answer(yes, null, null);
  }

  public static Answer of(double number) {
    return new Answer(null, number, null);
  }

  /** A photo of the piece, by its identity. */
  public static Answer ofPhoto(long photo) {
    return new Answer(null, null, photo);
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

  /** {@code "yes"}, {@code "1.2 mm"}, {@code "photo 12"}. */
  public String inWords(String unit) {
    if (photo != null) {
      return "photo " + photo;
    }
    if (number == null) {
      return Boolean.TRUE.equals(yes) ? "yes" : "no";
    }
    return unit.isEmpty() ? Tolerance.number(number) : Tolerance.number(number) + " " + unit;
  }
}
