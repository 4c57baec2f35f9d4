package dev.flangewright.people;

import java.util.EnumSet;
import java.util.Set;

/** What an account is for, and with it what its holder may do. */
public enum Role {
  LEAD("lead", EnumSet.allOf(Permission.class)),
  FITTER("fitter", EnumSet.of(Permission.LOG_WORK, Permission.SCRAP)),
  VOLUNTEER("volunteer", EnumSet.of(Permission.LOG_WORK)),
  INSPECTOR("inspector", EnumSet.of(Permission.RELEASE_HOLD, Permission.SCRAP, Permission.INSPECT)),
  MANAGER("manager", EnumSet.of(Permission.EDIT_REGISTER)),
  GUEST("guest", EnumSet.noneOf(Permission.class));

  private final String word;
  private final Set<Permission> permissions;

  Role(String word, Set<Permission> permissions) {
    this.word = word;
    this.permissions = permissions;
  }

  /** The word for this role on pages. */
  public String word() {
    return word;
  }

  public Set<Permission> permissions() {
    return Set.copyOf(permissions);
  }
}
