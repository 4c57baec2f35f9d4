package dev.flangewright.materials;

import dev.flangewright.people.Refused;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Texts that people enter beside a value, and the words for who entered it and when. */
final class EntryText {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH).withZone(ZoneOffset.UTC);

  private EntryText() {}

  /**
   * @throws Refused if the text is too short or too long
   */
  static String of(String field, String value, int least, int most) {
    String clean = value.strip();
    if (clean.length() < least || clean.length() > most) {
      throw Refused.unacceptable(field + " needs " + least + " to " + most + " characters.");
    }
    return clean;
  }

  static String entered(String who, Instant at) {
    return "entered by " + who + " on " + DAY.format(at);
  }
}
