package dev.flangewright.people;

import org.springframework.security.core.AuthenticationException;

/** So many sign-ins have failed that the next one has to wait. */
public class TooManyAttempts extends AuthenticationException {

  private static final long serialVersionUID = 1L;

  private final long seconds;

  TooManyAttempts(long seconds) {
    super("Too many sign-ins have failed. Try again in " + seconds + " s.");
    this.seconds = seconds;
  }

  /** How long to wait, at least 1. */
  public long seconds() {
    return seconds;
  }
}
