package dev.flangewright.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * The one-time token of a new installation. It stands in the start-up log, which only the host's
 * owner reads, so that no stranger can make the first account.
 */
@Component
public class FirstRun {

  private static final Logger log = LoggerFactory.getLogger(FirstRun.class);

  private final KeepAccounts accounts;
  private final String token;
  private volatile boolean over;

  FirstRun(KeepAccounts accounts) {
    this.accounts = accounts;
    byte[] random = new byte[16];
    new SecureRandom().nextBytes(random);
    this.token = HexFormat.of().formatHex(random);
  }

  @EventListener(ApplicationReadyEvent.class)
  void announce() {
    if (isOpen()) {
      log.info("No account yet. Open /first-run and use this one-time token: {}", token);
    }
  }

  /** True until the first account is made. */
  public boolean isOpen() {
    if (!over && !accounts.nobodyYet()) {
      over = true;
    }
    return !over;
  }

  /**
   * Does the work of the first run; two people who send the form at once take turns, and the second
   * is refused.
   *
   * @throws Refused if there is an account already, or the token is another one
   */
  public synchronized void once(String offered, Runnable work) {
    if (!isOpen()) {
      throw Refused.conflict("There is an account already. Sign in with it.");
    }
    if (!hasToken(offered)) {
      throw Refused.unacceptable("This is not the token in the start-up log.");
    }
    work.run();
  }

  /** Compares in constant time. */
  public boolean hasToken(String offered) {
    return MessageDigest.isEqual(
        token.getBytes(StandardCharsets.UTF_8), offered.strip().getBytes(StandardCharsets.UTF_8));
  }
}
