package dev.flangewright.bench.web;

import dev.flangewright.bench.Hours;
import dev.flangewright.bench.StageEntry;
import dev.flangewright.people.LogTime;
import java.time.Instant;

/**
 * A line of a piece's log.
 *
 * @param said who did what, and in how many hours
 */
record LogLine(String when, String said, String note, boolean undone) {

  static LogLine of(StageEntry entry, Instant now) {
    Double hours = entry.hours();
    return new LogLine(
        LogTime.of(entry.doneAt(), now),
        "%s %s \"%s\"%s"
            .formatted(
                entry.who(),
                entry.action().word(),
                entry.stageName(),
                hours == null ? "" : ", " + Hours.inWords(hours)),
        entry.note(),
        entry.undone());
  }
}
