package dev.flangewright.people;

import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;

/** Signs in by name and password, in a form or for the API, no faster than guessing is to go. */
@Component
class PasswordSignIn implements AuthenticationProvider {

  private final DaoAuthenticationProvider passwords;
  private final SignInAttempts attempts;

  PasswordSignIn(AccountSignIn accounts, PasswordEncoder encoder, SignInAttempts attempts) {
    this.passwords = new DaoAuthenticationProvider(accounts::loadUserByUsername);
    this.passwords.setPasswordEncoder(encoder);
    this.attempts = attempts;
  }

  @Override
  public Authentication authenticate(Authentication asked) {
    String address = address(asked);
    attempts.begin(asked.getName(), address);
    try {
      Authentication signedIn = passwords.authenticate(asked);
      attempts.succeeded(asked.getName(), address);
      return signedIn;
    } catch (AuthenticationException refused) {
      attempts.failed(asked.getName(), address);
      throw refused;
    }
  }

  @Override
  public boolean supports(Class<?> kind) {
    return passwords.supports(kind);
  }

  private static String address(Authentication asked) {
    return asked.getDetails() instanceof WebAuthenticationDetails from
        ? String.valueOf(from.getRemoteAddress())
        : "";
  }
}
