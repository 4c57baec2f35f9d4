package dev.flangewright.people;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Invites people to make an account of their own, so that nobody else ever knows its password. */
@Service
@Transactional
public class Invite {

  private final Invitations invitations;
  private final KeepAccounts accounts;
  private final Clock clock;

  Invite(Invitations invitations, KeepAccounts accounts, Clock clock) {
    this.invitations = invitations;
    this.accounts = accounts;
    this.clock = clock;
  }

  /**
   * @return the secret of the link; it is kept nowhere and cannot be shown again
   */
  @MayManagePeople
  public String to(Role role) {
    Secret secret = Secret.random();
    invitations.save(new Invitation(role, secret, SignedIn.name(), clock.instant()));
    return secret.text();
  }

  /** Those that can still be used, the newest first. */
  @MayManagePeople
  @Transactional(readOnly = true)
  public List<Invitation> open() {
    return invitations.findByUsedAtIsNullAndEndedAtIsNullAndExpiresAtAfterOrderByMadeAtDesc(
        clock.instant());
  }

  @MayManagePeople
  public void withdraw(long id) {
    invitations
        .findById(id)
        .orElseThrow(() -> Refused.unknown("invitation", id))
        .end(clock.instant());
  }

  /** The invitation that a link stands for; empty if it was used, withdrawn, or is too old. */
  @Transactional(readOnly = true)
  public Optional<Invitation> behind(String secret) {
    return invitations
        .findByDigest(new Secret(secret).digest())
        .filter(invitation -> invitation.isOpen(clock.instant()));
  }

  /**
   * Makes the account. Of two who use one link at once, the second is refused.
   *
   * @throws Refused if the link is not good, or the name or password cannot be taken
   */
  public void accept(String secret, String username, String password) {
    Invitation invitation =
        behind(secret)
            .orElseThrow(
                () ->
                    Refused.conflict(
                        "This invitation was used, withdrawn, or is too old. Ask for a new one."));
    accounts.invited(username, invitation.role(), password);
    invitation.isUsedBy(username.strip(), clock.instant());
  }
}
