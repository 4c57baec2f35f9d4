package dev.flangewright.people;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Lets a program in by its token. */
@Component
class TokenSignIn {

  private final AccessTokens tokens;
  private final Clock clock;

  TokenSignIn(AccessTokens tokens, Clock clock) {
    this.tokens = tokens;
    this.clock = clock;
  }

  /**
   * Signs in with all that the token's account may do.
   *
   * @param reading whether nothing is to be changed; a token that may not change lets in only then
   * @return empty if the token lets nobody in
   */
  @Transactional
  Optional<Authentication> signIn(String text, boolean reading) {
    Instant now = clock.instant();
    return tokens
        .findByDigest(new Secret(text).digest())
        .filter(token -> token.isGood(now))
        .filter(token -> reading || token.mayChange())
        .map(token -> used(token, now));
  }

  private static Authentication used(AccessToken token, Instant now) {
    if (token.isUseWorthNoting(now)) {
      token.isUsed(now);
    }
    Account account = token.account();
    String[] authorities = Authorities.of(account.role().permissions(), account.clearances());
    return UsernamePasswordAuthenticationToken.authenticated(
        account.username(), "", AuthorityUtils.createAuthorityList(authorities));
  }
}
