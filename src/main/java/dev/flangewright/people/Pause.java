package dev.flangewright.people;

import java.time.Duration;
import java.time.Instant;

/**
 * Failed sign-ins of one kind, and how long the next attempt has to wait: not at all for the first
 * few, then one second, doubled by every further failure up to a limit (OWASP Authentication Cheat
 * Sheet, 2026: a delay that grows, so that nobody can lock a colleague out).
 */
record Pause(int failures, Instant last) {

  static final Pause NONE = new Pause(0, Instant.EPOCH);

  /** Failures this old count no longer. */
  static final Duration FORGOTTEN = Duration.ofHours(1);

  private static final int MOST_DOUBLINGS = 20;

  /**
   * @param free failures after which nobody has to wait yet
   * @param longest the limit of the delay
   */
  Instant endsAt(int free, Duration longest) {
    if (failures < free) {
      return Instant.EPOCH;
    }
    Duration grown = Duration.ofSeconds(1L << Math.min(failures - free, MOST_DOUBLINGS));
    return last.plus(grown.compareTo(longest) < 0 ? grown : longest);
  }

  Pause failedAgain(Instant now) {
    return new Pause((isForgotten(now) ? 0 : failures) + 1, now);
  }

  boolean isForgotten(Instant now) {
    return last.plus(FORGOTTEN).isBefore(now);
  }
}
