package dev.flangewright.bench;

import java.time.Duration;
import java.time.Instant;

/**
 * How long after it came in an entry may be taken back at once. It is granted a little longer than
 * it is offered: the press may be slow on its way.
 */
public enum Moment {
  OFFERED(Duration.ofSeconds(10)),
  GRANTED(Duration.ofSeconds(15));

  private final Duration length;

  Moment(Duration length) {
    this.length = length;
  }

  public long seconds() {
    return length.toSeconds();
  }

  boolean holds(Instant receivedAt, Instant now) {
    return !now.isAfter(receivedAt.plus(length));
  }
}
