package dev.flangewright.people;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The pauses of everybody, by name or by address. Bounded: the one longest untouched is forgotten
 * first, so a flood of made-up names costs no memory.
 */
final class Pauses {

  private static final int MOST = 20_000;

  private final int free;
  private final Duration longest;
  private final Map<String, Pause> pauses = new LinkedHashMap<>(16, 0.75f, true);

  Pauses(int free, Duration longest) {
    this.free = free;
    this.longest = longest;
  }

  /** How long an attempt has to wait; zero or less if it need not. */
  synchronized Duration left(String who, Instant now) {
    return Duration.between(now, pauses.getOrDefault(who, Pause.NONE).endsAt(free, longest));
  }

  /** Lets one attempt begin; of several at once only the first, once there were failures enough. */
  synchronized void begins(String who, Instant now) {
    pauses.computeIfPresent(
        who, (key, old) -> old.failures() < free ? old : new Pause(old.failures(), now));
  }

  synchronized void failed(String who, Instant now) {
    pauses.merge(who, Pause.NONE.failedAgain(now), (old, first) -> old.failedAgain(now));
    if (pauses.size() > MOST) {
      pauses.remove(pauses.keySet().iterator().next());
    }
  }

  synchronized void forget(String who) {
    pauses.remove(who);
  }
}
