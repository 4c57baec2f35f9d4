package dev.flangewright.overview.demo;

import dev.flangewright.people.InventedAccount;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** In the demo profile: makes the demo's accounts and build, and prints who may sign in. */
@Component
@Profile("demo")
class DemoAccounts implements ApplicationRunner {

  private static final Logger log = LoggerFactory.getLogger(DemoAccounts.class);

  private final KeepAccounts accounts;
  private final LoadDemo demo;

  DemoAccounts(KeepAccounts accounts, LoadDemo demo) {
    this.accounts = accounts;
    this.demo = demo;
  }

  @Override
  public void run(ApplicationArguments arguments) {
    if (!accounts.nobodyYet()) {
      return;
    }
    accounts.invented();
    SignedIn.as(Role.LEAD.word(), Role.LEAD, demo::load);
    log.info("Demo, all invented; it is gone when the program stops. Sign in with:");
    InventedAccount.all().forEach(one -> log.info("  {}  {}", one.name(), one.password()));
  }
}
