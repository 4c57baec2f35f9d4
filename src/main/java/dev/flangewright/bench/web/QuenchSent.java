package dev.flangewright.bench.web;

import dev.flangewright.bench.Quenching;
import dev.flangewright.heat.QuenchTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import org.springframework.stereotype.Component;

/** Reads what the form that finishes a heat treatment says of the quench. */
@Component
class QuenchSent {

  /** A time of day; empty for the time at which the stage is finished. */
  static final String TIME = "quenchedAt";

  private static final String NOT_QUENCHED = "notQuenched";

  private final EntryDoor door;
  private final Clock clock;

  QuenchSent(EntryDoor door, Clock clock) {
    this.door = door;
    this.clock = clock;
  }

  /** What the form says, as somebody said it at the time at which the entry was made. */
  Quenching said(Map<String, String> sent) {
    boolean none = "true".equals(sent.get(NOT_QUENCHED));
    String typed = none ? "" : sent.getOrDefault(TIME, "");
    Instant told = door.madeAt().orElse(clock.instant());
    return new Quenching(QuenchTime.read(typed, told, ZoneId.systemDefault()), none);
  }
}
