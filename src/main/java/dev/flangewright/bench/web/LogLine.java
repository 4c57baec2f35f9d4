package dev.flangewright.bench.web;

import dev.flangewright.bench.PieceEvent;
import dev.flangewright.people.LogTime;
import java.time.Duration;
import java.time.Instant;

/**
 * A line of a piece's time line.
 *
 * @param said who did what, and in how many hours
 */
record LogLine(String when, String said, String note, boolean undone) {

  private static final Duration WORTH_SAYING = Duration.ofMinutes(1);

  static LogLine of(PieceEvent event, Instant now) {
    return new LogLine(
        LogTime.of(event.at(), now),
        event.who() + " " + event.what() + received(event, now),
        event.note(),
        event.undone());
  }

  /** Said only where it tells something: of an entry that came in later than it was done. */
  private static String received(PieceEvent event, Instant now) {
    Duration late = Duration.between(event.at(), event.receivedAt());
    return late.compareTo(WORTH_SAYING) > 0
        ? " (received " + LogTime.of(event.receivedAt(), now) + ")"
        : "";
  }
}
