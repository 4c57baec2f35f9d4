package dev.flangewright.bench.web;

import dev.flangewright.bench.PieceEvent;
import dev.flangewright.people.LogTime;
import java.time.Instant;

/**
 * A line of a piece's time line.
 *
 * @param said who did what, and in how many hours
 */
record LogLine(String when, String said, String note, boolean undone) {

  static LogLine of(PieceEvent event, Instant now) {
    return new LogLine(
        LogTime.of(event.at(), now),
        event.who() + " " + event.what(),
        event.note(),
        event.undone());
  }
}
