package dev.flangewright.people.web;

import dev.flangewright.people.AccessToken;
import dev.flangewright.people.LogTime;
import java.time.Instant;

/**
 * A token as the page lists it.
 *
 * @param state in words: until when it is good, or since when it is not
 */
record TokenLine(long id, String name, String may, String used, String state, boolean good) {

  static TokenLine of(AccessToken token, Instant now) {
    Instant used = token.lastUsedAt();
    return new TokenLine(
        token.id(),
        token.name(),
        token.mayChange() ? "read and change" : "read",
        used == null ? "never" : LogTime.of(used, now),
        state(token, now),
        token.isGood(now));
  }

  private static String state(AccessToken token, Instant now) {
    Instant ended = token.endedAt();
    if (ended != null) {
      return "ended " + LogTime.of(ended, now);
    }
    return (token.isGood(now) ? "good until " : "expired ") + LogTime.moment(token.expiresAt());
  }
}
