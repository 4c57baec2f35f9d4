package dev.flangewright.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/** The growing delay that the OWASP Authentication Cheat Sheet (2026) asks for. */
class SignInAttemptsTest {

  private static final String HERE = "192.0.2.1";

  private final Hands clock = new Hands();
  private final SignInAttempts attempts = new SignInAttempts(clock);

  @Test
  void the_first_five_failures_cost_no_time() {
    fail("ann", HERE, 4);
    assertThat(secondsToWait("ann", HERE)).isZero();
    fail("ann", HERE, 1);
    assertThat(secondsToWait("ann", HERE)).isEqualTo(1);
  }

  @Test
  void every_further_failure_doubles_the_delay_up_to_a_minute() {
    fail("ann", HERE, 5);
    long[] expected = {2, 4, 8, 16, 32, 60, 60};
    for (long seconds : expected) {
      clock.pass(Duration.ofSeconds(secondsToWait("ann", HERE)));
      fail("ann", HERE, 1);
      assertThat(secondsToWait("ann", HERE)).isEqualTo(seconds);
    }
  }

  @Test
  void a_name_is_slowed_down_from_wherever_it_is_tried_and_in_whatever_letters() {
    for (int i = 0; i < 8; i++) {
      fail("ann", "192.0.2." + (10 + i), 1);
    }
    assertThat(secondsToWait("ANN", "192.0.2.99")).isPositive();
    assertThat(secondsToWait("ivo", "192.0.2.99")).isZero();
  }

  @Test
  void nobody_is_locked_out_where_they_have_signed_in_before() {
    attempts.begin("ann", HERE);
    attempts.succeeded("ann", HERE);
    fail("ann", "192.0.2.66", 50);
    assertThat(secondsToWait("ann", HERE)).isZero();
    fail("ann", HERE, 6);
    assertThat(secondsToWait("ann", HERE)).as("its own failures there count").isPositive();
  }

  @Test
  void an_address_that_tries_many_names_waits_too() {
    for (int i = 0; i < 25; i++) {
      attempts.failed("name " + i, HERE);
    }
    assertThat(secondsToWait("another", HERE)).isEqualTo(32);
    assertThat(secondsToWait("another", "192.0.2.2")).isZero();
  }

  @Test
  void of_two_at_once_only_one_may_try_once_there_were_failures() {
    fail("ann", HERE, 6);
    clock.pass(Duration.ofSeconds(2));
    assertThatCode(() -> attempts.begin("ann", HERE)).doesNotThrowAnyException();
    assertThatThrownBy(() -> attempts.begin("ann", HERE)).isInstanceOf(TooManyAttempts.class);
  }

  @Test
  void the_right_password_ends_the_delay_and_an_hour_forgets_it() {
    fail("ann", HERE, 6);
    clock.pass(Duration.ofSeconds(2));
    attempts.begin("ann", HERE);
    attempts.succeeded("ann", HERE);
    assertThat(secondsToWait("ann", HERE)).isZero();
    fail("ivo", HERE, 6);
    clock.pass(Pause.FORGOTTEN.plusSeconds(1));
    fail("ivo", HERE, 1);
    assertThat(secondsToWait("ivo", HERE)).isZero();
  }

  private void fail(String name, String address, int times) {
    for (int i = 0; i < times; i++) {
      attempts.failed(name, address);
    }
  }

  private long secondsToWait(String name, String address) {
    TooManyAttempts refused =
        catchThrowableOfType(TooManyAttempts.class, () -> attempts.begin(name, address));
    return refused == null ? 0 : refused.seconds();
  }

  /** A clock whose hands the test moves. */
  private static final class Hands extends Clock {

    private Instant now = Instant.parse("2026-06-02T12:00:00Z");

    void pass(Duration time) {
      now = now.plus(time);
    }

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
