package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.flangewright.people.Refused;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** The rule for the time that a device tells; five minutes of difference are our own choice. */
class DoneAtTest {

  private static final Instant BEGUN = Instant.parse("2026-06-02T08:00:00Z");
  private static final Instant NOW = Instant.parse("2026-06-02T12:00:00Z");

  @Test
  void an_entry_made_an_hour_ago_keeps_its_time() {
    Instant then = NOW.minus(Duration.ofHours(1));
    assertThat(DoneAt.within(BEGUN, then, NOW)).isEqualTo(then);
  }

  @Test
  void a_clock_a_little_fast_or_slow_is_put_right() {
    assertThat(DoneAt.within(BEGUN, NOW.plus(DoneAt.SKEW), NOW)).isEqualTo(NOW);
    assertThat(DoneAt.within(BEGUN, BEGUN.minus(DoneAt.SKEW), NOW)).isEqualTo(BEGUN);
  }

  @Test
  void nothing_is_done_in_the_future() {
    assertThat(refused(NOW.plus(DoneAt.SKEW).plusSeconds(1)).kind())
        .isEqualTo(Refused.Kind.UNACCEPTABLE);
  }

  @Test
  void nothing_is_done_before_what_was_logged_before_it() {
    assertThat(refused(BEGUN.minus(DoneAt.SKEW).minusSeconds(1)))
        .hasMessageContaining("2026-06-02T08:00:00Z");
  }

  private static Refused refused(Instant told) {
    return catchThrowableOfType(Refused.class, () -> DoneAt.within(BEGUN, told, NOW));
  }
}
