package dev.flangewright.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** OWASP ASVS 5.0, 6.2.1 (length), 6.2.4 (common ones), 6.2.5 (no composition), 6.2.9 (long). */
class PasswordsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tailor candle wagon",
        "ännchen und der Hammer",
        "aluminium-rasp-oxbow",
        "correcthorsebatterystaple",
        "k8#vQ2!mZx7p"
      })
  void long_ones_that_nobody_guesses_are_taken_whatever_they_are_made_of(String password) {
    assertThat(Passwords.acceptable(password, "ann")).isEqualTo(password);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "password1234",
        "passwordpassword",
        "123456789012",
        "qwertyuiopas",
        "aaaaaaaaaaaa",
        "Password123!",
        "iloveyou1234",
        "annabellannabell"
      })
  void those_that_are_guessed_first_are_refused(String password) {
    assertThatThrownBy(() -> Passwords.acceptable(password, "annabell"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("guessed first");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 11, 201})
  void too_short_and_too_long_ones_are_refused(int length) {
    assertThatThrownBy(() -> Passwords.acceptable("x".repeat(length), "ann"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("The password has " + length + " characters");
  }
}
