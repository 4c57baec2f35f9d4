package dev.flangewright.bench.web;

import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.time.Instant;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** What a page needs to send entries that waited: who is signed in, and a token for the form. */
@RestController
class TokenController {

  private final Clock clock;

  TokenController(Clock clock) {
    this.clock = clock;
  }

  /**
   * @param field the name under which the form carries the token
   * @param now by the clock that entries are compared with
   */
  record FreshToken(String account, String field, String token, Instant now) {}

  @GetMapping("/bench/token")
  FreshToken token(CsrfToken token) {
    return new FreshToken(
        SignedIn.name(), token.getParameterName(), token.getToken(), clock.instant());
  }
}
