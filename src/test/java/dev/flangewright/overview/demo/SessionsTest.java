package dev.flangewright.overview.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class SessionsTest {

  /** 3 March 2026 is a Tuesday. */
  private final Sessions sessions = new Sessions(Instant.parse("2026-03-03T07:00:00Z"));

  @Test
  void the_latest_session_is_the_afternoon_of_the_day_before() {
    assertThat(sessions.begin(0)).isEqualTo("2026-03-02T13:30:00Z");
    assertThat(sessions.begin(1)).isEqualTo("2026-03-02T09:00:00Z");
  }

  @Test
  void nobody_works_on_a_sunday() {
    assertThat(sessions.begin(2)).isEqualTo("2026-02-28T13:30:00Z");
    for (int back = 0; back < 200; back++) {
      Instant begin = sessions.begin(back);
      assertThat(begin.atOffset(ZoneOffset.UTC).getDayOfWeek()).isNotEqualTo(DayOfWeek.SUNDAY);
      assertThat(sessions.begin(back + 1)).isBefore(begin);
    }
  }
}
