package dev.flangewright.people;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * The one clock, handed to whoever needs the time. It shows the present, save to a thread that
 * tells an invented past: the demo's history goes through the same doors as real work, and bears
 * the times at which it is said to have happened.
 */
@Component
public class ShopClock extends Clock {

  private static final ThreadLocal<Instant> TOLD = new ThreadLocal<>();

  private final Clock present = Clock.systemUTC();

  /** Runs the work as if it were {@code then}; other threads keep the present. */
  public void at(Instant then, Runnable work) {
    Instant before = TOLD.get();
    try {
      TOLD.set(then);
      work.run();
    } finally {
      goBackTo(before);
    }
  }

  private void goBackTo(@Nullable Instant before) {
    if (before == null) {
      TOLD.remove();
    } else {
      TOLD.set(before);
    }
  }

  @Override
  public Instant instant() {
    Instant then = TOLD.get();
    return then == null ? present.instant() : then;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  /** The present in another zone; an invented past is told in UTC alone. */
  @Override
  public Clock withZone(ZoneId zone) {
    return present.withZone(zone);
  }
}
