package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Hours as people write and read them. */
public final class Hours {

  private static final double MOST = 1000;

  private Hours() {}

  /**
   * Reads hours as typed: {@code 1.5} or {@code 1,5}.
   *
   * @return null if nothing was typed
   * @throws Refused if it is no number
   */
  public static @Nullable Double read(String typed) {
    if (typed.isBlank()) {
      return null;
    }
    try {
      return Double.valueOf(typed.strip().replace(',', '.'));
    } catch (NumberFormatException e) {
      throw Refused.unacceptable("hours cannot be read; write a number such as 1.5.");
    }
  }

  /**
   * @return the hours as they are; null if they are not known
   * @throws Refused outside 0 to 1000
   */
  static @Nullable Double checked(@Nullable Double hours) {
    if (hours != null && !(hours >= 0 && hours <= MOST)) {
      throw Refused.unacceptable("hours is " + hours + "; it must be from 0 to 1000.");
    }
    return hours;
  }

  /** {@code 1 h 20}; {@code 0 h} for none. */
  public static String inWords(double hours) {
    long minutes = Math.round(hours * 60);
    String whole = minutes / 60 + " h";
    return minutes % 60 == 0 ? whole : String.format(Locale.ROOT, "%s %02d", whole, minutes % 60);
  }
}
