package dev.flangewright.people;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** When something was logged, in the workshop's time: the machine's time zone. */
public final class LogTime {

  private static final Duration THIS_WEEK = Duration.ofDays(6);
  private static final DateTimeFormatter RECENT = format("EEE HH:mm");
  private static final DateTimeFormatter LONG_AGO = format("d MMM yyyy HH:mm");

  private LogTime() {}

  /** {@code Tue 14:10} within six days of now, {@code 2 Jun 2026 14:10} before and after. */
  public static String of(Instant then, Instant now) {
    boolean recent = Duration.between(then, now).abs().compareTo(THIS_WEEK) < 0;
    return (recent ? RECENT : LONG_AGO).format(then);
  }

  /** {@code 2 Jun 2026 14:10}, also of what is still to come. */
  public static String moment(Instant then) {
    return LONG_AGO.format(then);
  }

  private static DateTimeFormatter format(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.UK).withZone(ZoneId.systemDefault());
  }
}
