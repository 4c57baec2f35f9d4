package dev.flangewright.people;

import java.time.Clock;
import java.util.List;
import java.util.Set;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes and changes accounts. */
@Service
@Transactional
public class KeepAccounts {

  private final Accounts accounts;
  private final PasswordEncoder passwords;
  private final ApplicationEventPublisher events;
  private final Clock clock;

  KeepAccounts(
      Accounts accounts, PasswordEncoder passwords, ApplicationEventPublisher events, Clock clock) {
    this.accounts = accounts;
    this.passwords = passwords;
    this.events = events;
    this.clock = clock;
  }

  @Transactional(readOnly = true)
  public boolean nobodyYet() {
    return accounts.count() == 0;
  }

  @MayManagePeople
  @Transactional(readOnly = true)
  public List<Account> all() {
    return accounts.findAllByOrderByUsername();
  }

  /** Makes the first account, a lead; refused once there is any account. */
  public void first(String username, String password) {
    if (!nobodyYet()) {
      throw Refused.conflict("There is an account already. Sign in with it.");
    }
    make(username, Role.LEAD, password);
  }

  /** Makes the demo scenario's accounts; refused once there is any account. */
  public void invented() {
    if (!nobodyYet()) {
      throw Refused.conflict("Demo accounts are made only where there is no account yet.");
    }
    InventedAccount.all().forEach(one -> make(one.name(), one.role(), one.password()));
  }

  @MayManagePeople
  public void add(String username, Role role, String password) {
    make(username, role, password);
  }

  /** Makes the account of somebody who was invited to this role. */
  void invited(String username, Role role, String password) {
    make(username, role, password);
  }

  @MayManagePeople
  public void changeRole(long id, Role role) {
    Account account = find(id);
    if (role != Role.LEAD) {
      refuseLosingTheLastLead(account);
    }
    account.becomes(role);
    accessChanged(account);
  }

  /** Clears an account for these sorts of work and no others. */
  @MayManagePeople
  public void clear(long id, Set<Clearance> clearances) {
    Account account = find(id);
    account.isClearedFor(clearances);
    accessChanged(account);
  }

  @MayManagePeople
  public void setPassword(long id, String password) {
    takePassword(find(id), password);
  }

  /**
   * Gives whoever is signed in a new password, and signs them out everywhere.
   *
   * @throws Refused if the old password is not theirs or the new one cannot be taken
   */
  @PreAuthorize("isAuthenticated()")
  public void changeOwnPassword(String old, String password) {
    Account self = accounts.findByUsername(SignedIn.name()).orElseThrow();
    if (!passwords.matches(old, self.passwordHash())) {
      throw Refused.unacceptable("The old password is not right.");
    }
    takePassword(self, password);
  }

  @MayManagePeople
  public void enable(long id, boolean enabled) {
    Account account = find(id);
    if (!enabled) {
      refuseLosingTheLastLead(account);
    }
    account.isEnabled(enabled);
    accessChanged(account);
  }

  private void takePassword(Account account, String password) {
    account.takesPassword(passwords.encode(Passwords.acceptable(password, account.username())));
    accessChanged(account);
  }

  private void accessChanged(Account account) {
    events.publishEvent(new AccessChanged(account.username()));
  }

  private void make(String username, Role role, String password) {
    String name = Usernames.acceptable(username);
    if (accounts.findByUsername(name).isPresent()) {
      throw Refused.conflict("There is already an account named " + name + ".");
    }
    String hash = passwords.encode(Passwords.acceptable(password, name));
    accounts.save(new Account(name, role, hash, clock.instant()));
  }

  private Account find(long id) {
    return accounts.findById(id).orElseThrow(() -> Refused.unknown("account", id));
  }

  private void refuseLosingTheLastLead(Account account) {
    boolean isActiveLead = account.role() == Role.LEAD && account.enabled();
    if (isActiveLead && accounts.countByRoleAndEnabledTrue(Role.LEAD) == 1) {
      throw Refused.conflict("This is the only lead. Make another lead first.");
    }
  }
}
