package dev.flangewright.overview;

import dev.flangewright.overview.demo.LoadDemo;
import dev.flangewright.parts.MakeBuild;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes the first account of an installation and its first build, both or neither. */
@Service
public class BeginInstallation {

  private final KeepAccounts accounts;
  private final MakeBuild makeBuild;
  private final LoadDemo demo;

  BeginInstallation(KeepAccounts accounts, MakeBuild makeBuild, LoadDemo demo) {
    this.accounts = accounts;
    this.makeBuild = makeBuild;
    this.demo = demo;
  }

  /**
   * @throws dev.flangewright.people.Refused if there is an account already, or a name or the
   *     password cannot be taken
   */
  @Transactional
  public void withEmptyBuild(String leadName, String password, String buildName) {
    accounts.first(leadName, password);
    SignedIn.as(leadName.strip(), Role.LEAD, () -> makeBuild.named(buildName, ""));
  }

  /**
   * @throws dev.flangewright.people.Refused if there is an account already, or the name or password
   *     cannot be taken
   */
  @Transactional
  public void withDemo(String leadName, String password) {
    accounts.first(leadName, password);
    SignedIn.as(leadName.strip(), Role.LEAD, demo::load);
  }
}
