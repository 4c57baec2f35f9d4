package dev.flangewright.people;

import java.time.Clock;
import java.util.List;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes and ends the tokens by which programs act under the name of whoever is signed in. */
@Service
@Transactional
@PreAuthorize("isAuthenticated()")
public class KeepTokens {

  /** So that a token is known for one wherever it turns up. */
  static final String BEGINS_WITH = "fw_";

  private final AccessTokens tokens;
  private final Accounts accounts;
  private final Clock clock;

  KeepTokens(AccessTokens tokens, Accounts accounts, Clock clock) {
    this.tokens = tokens;
    this.accounts = accounts;
    this.clock = clock;
  }

  /**
   * @return the token; it is kept nowhere and cannot be shown again
   */
  public String make(TokenPlan plan) {
    Account self = accounts.findByUsername(SignedIn.name()).orElseThrow();
    Secret secret = new Secret(BEGINS_WITH + Secret.random().text());
    tokens.save(new AccessToken(self, plan, secret, clock.instant()));
    return secret.text();
  }

  /** The tokens of whoever is signed in, the newest first. */
  @Transactional(readOnly = true)
  public List<AccessToken> mine() {
    return tokens.findByAccountUsernameOrderByMadeAtDesc(SignedIn.name());
  }

  /**
   * Ends a token; ending it twice does nothing.
   *
   * @throws AccessDeniedException if it is somebody else's
   */
  public void end(long id) {
    AccessToken token = tokens.findById(id).orElseThrow(() -> Refused.unknown("token", id));
    if (!token.account().username().equals(SignedIn.name())) {
      throw new AccessDeniedException("This is somebody else's token");
    }
    token.end(clock.instant());
  }
}
