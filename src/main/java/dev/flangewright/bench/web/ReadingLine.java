package dev.flangewright.bench.web;

import dev.flangewright.bench.GaugeLog;
import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.parts.GaugeKind;
import dev.flangewright.people.LogTime;
import java.time.Instant;

/** A gauge reading in the list of a piece's readings. */
record ReadingLine(long id, String when, String words, String answer) {

  static ReadingLine of(GaugeLog log, Instant now) {
    GaugeEntry written = log.written();
    String words =
        "%s, %s edge, %s %s:"
            .formatted(
                log.who(),
                written.flange(),
                GaugeKind.named(written.gauge()).label(),
                written.reading());
    return new ReadingLine(log.id(), LogTime.of(log.readAt(), now), words, log.answer());
  }
}
