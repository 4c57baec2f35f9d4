package dev.flangewright.bench;

import dev.flangewright.people.Clearance;
import dev.flangewright.people.Permission;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who asks what to do next: the account's name, what it may do, and what for it is cleared.
 *
 * @param name as it stands in the log
 */
public record Hands(String name, Set<Permission> may, Set<Clearance> clearances) {

  /** Whoever is signed in. */
  public static Hands signedIn() {
    return new Hands(
        SignedIn.name(),
        Arrays.stream(Permission.values()).filter(SignedIn::may).collect(Collectors.toSet()),
        Arrays.stream(Clearance.values()).filter(SignedIn::isCleared).collect(Collectors.toSet()));
  }

  /** Somebody with all that a role usually has. */
  public static Hands of(String name, Role role) {
    return new Hands(name, role.permissions(), role.clearances());
  }

  boolean log() {
    return may.contains(Permission.LOG_WORK);
  }

  boolean releaseHolds() {
    return may.contains(Permission.RELEASE_HOLD);
  }

  boolean inspect() {
    return may.contains(Permission.INSPECT);
  }

  /** Does nothing at the bench and wants to see what the others do. */
  public boolean looksOn() {
    return !log() && !releaseHolds() && !inspect();
  }

  /** Forms metal and answers for it: the lead. */
  boolean lead() {
    return log() && inspect();
  }

  /** Forms metal, but has others decide whether it is lost: a volunteer. */
  boolean learn() {
    return log() && !may.contains(Permission.SCRAP);
  }
}
