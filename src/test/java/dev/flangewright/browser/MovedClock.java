package dev.flangewright.browser;

import dev.flangewright.people.ShopClock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicReference;
import org.springframework.context.support.GenericApplicationContext;

/** The clock of an installation that a test moves forward, for every thread of its server. */
final class MovedClock extends ShopClock {

  private final AtomicReference<Duration> ahead = new AtomicReference<>(Duration.ZERO);

  /** Puts it in the place of the installation's own. */
  static void putInto(GenericApplicationContext installation) {
    installation.registerBean(
        "movedClock", MovedClock.class, MovedClock::new, bean -> bean.setPrimary(true));
  }

  void forwardMinutes(long minutes) {
    ahead.updateAndGet(before -> before.plusMinutes(minutes));
  }

  @Override
  public Instant instant() {
    return super.instant().plus(ahead.get());
  }
}
