package dev.flangewright.overview.demo;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;

/** The half days of the demo's shop, counted back from the day before {@code now}; no Sundays. */
record Sessions(Instant now) {

  private static final LocalTime MORNING = LocalTime.of(9, 0);
  private static final LocalTime AFTERNOON = LocalTime.of(13, 30);

  /** When the session {@code back} sessions before the latest one began; 0 is the latest. */
  Instant begin(int back) {
    LocalDate day = now.atOffset(ZoneOffset.UTC).toLocalDate();
    for (int days = back / 2; days >= 0; days--) {
      day = day.minusDays(1);
      if (day.getDayOfWeek() == DayOfWeek.SUNDAY) {
        day = day.minusDays(1);
      }
    }
    return day.atTime(back % 2 == 0 ? AFTERNOON : MORNING).toInstant(ZoneOffset.UTC);
  }
}
