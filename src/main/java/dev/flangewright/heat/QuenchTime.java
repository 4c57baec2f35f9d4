package dev.flangewright.heat;

import dev.flangewright.people.Refused;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;

/** A time of day as it is typed at the bench: the last such time before it is told. */
public final class QuenchTime {

  private QuenchTime() {}

  /**
   * @param typed {@code 14:10} in the zone of the workshop
   * @param told when it is told; a time up to five minutes later is taken for the clock on the wall
   *     being fast
   * @return null if nothing was typed
   * @throws Refused if it is no time
   */
  public static @Nullable Instant read(String typed, Instant told, ZoneId zone) {
    if (typed.isBlank()) {
      return null;
    }
    ZonedDateTime then = told.atZone(zone);
    ZonedDateTime today = then.with(time(typed.strip()));
    return today.isAfter(then.plus(Quench.SKEW))
        ? today.minusDays(1).toInstant()
        : today.toInstant();
  }

  private static LocalTime time(String typed) {
    try {
      return LocalTime.parse(typed);
    } catch (DateTimeParseException e) {
      throw Refused.unacceptable("The time of the quench cannot be read; write it as 14:10.");
    }
  }
}
