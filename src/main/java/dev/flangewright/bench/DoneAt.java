package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * When the entry that is being logged was done: now, or earlier, if it was made where there was no
 * network. A time told may not lie in the future, nor before the piece was begun, nor before what
 * was last logged on its stage. Clocks differ, so up to five minutes of that are put right
 * silently.
 */
@Component
class DoneAt {

  static final Duration SKEW = Duration.ofMinutes(5);

  private static final ThreadLocal<@Nullable Instant> TOLD = new ThreadLocal<>();
  private final Clock clock;

  DoneAt(Clock clock) {
    this.clock = clock;
  }

  /** Runs the entry as done at the time told; null means now. */
  void told(@Nullable Instant time, Runnable entry) {
    try {
      TOLD.set(time);
      entry.run();
    } finally {
      TOLD.remove();
    }
  }

  /**
   * The signed-in account's signature on a stage.
   *
   * @throws Refused if the time told cannot be
   */
  Signature signature(Piece piece, String code, String note) {
    Instant now = clock.instant();
    Instant time = TOLD.get();
    Instant at = time == null ? now : within(piece.lastTouched(code), time, now);
    return new Signature(SignedIn.name(), at, note, now);
  }

  static Instant within(Instant earliest, Instant told, Instant now) {
    if (told.isAfter(now.plus(SKEW))) {
      throw Refused.unacceptable(
          "The entry is said to have been done at %s, which is still to come. Look at the clock of the device."
              .formatted(whole(told)));
    }
    if (told.isBefore(earliest.minus(SKEW))) {
      throw Refused.conflict(
          "The entry is said to have been done at %s, before what was logged on this stage at %s."
              .formatted(whole(told), whole(earliest)));
    }
    Instant notTooEarly = told.isBefore(earliest) ? earliest : told;
    return notTooEarly.isAfter(now) ? now : notTooEarly;
  }

  private static Instant whole(Instant time) {
    return time.truncatedTo(ChronoUnit.SECONDS);
  }
}
