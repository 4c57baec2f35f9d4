package dev.flangewright.overview.demo;

import dev.flangewright.people.InventedAccount;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.SmartLifecycle;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * In the demo profile: makes the demo's accounts and build before the web server, which starts in a
 * late phase, lets anybody in; then prints who may sign in.
 */
@Component
@Profile("demo")
class DemoAccounts implements SmartLifecycle {

  private static final Logger log = LoggerFactory.getLogger(DemoAccounts.class);

  private final KeepAccounts accounts;
  private final LoadDemo demo;
  private boolean loaded;

  DemoAccounts(KeepAccounts accounts, LoadDemo demo) {
    this.accounts = accounts;
    this.demo = demo;
  }

  @Override
  public int getPhase() {
    return 0;
  }

  @Override
  public void start() {
    if (accounts.nobodyYet()) {
      accounts.invented();
      SignedIn.as(Role.LEAD.word(), Role.LEAD, demo::load);
    }
    loaded = true;
  }

  @Override
  public void stop() {
    loaded = false;
  }

  @Override
  public boolean isRunning() {
    return loaded;
  }

  @EventListener(ApplicationReadyEvent.class)
  void announce() {
    log.info("Demo, all invented; it is gone when the program stops. Sign in with:");
    InventedAccount.all().forEach(one -> log.info("  {}  {}", one.name(), one.password()));
  }
}
