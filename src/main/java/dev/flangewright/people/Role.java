package dev.flangewright.people;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** What an account is for, and with it what its holder may do. */
public enum Role {
  LEAD("lead", EnumSet.allOf(Permission.class)),
  FITTER("fitter", EnumSet.of(Permission.KEEP_BLOCKS, Permission.LOG_WORK, Permission.SCRAP)),
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

  /** What it may do, as a sentence for pages. */
  public String mayInWords() {
    return permissions.isEmpty()
        ? "May read."
        : permissions.stream()
            .map(Permission::words)
            .collect(Collectors.joining("; ", "May ", "."));
  }

  public Set<Permission> permissions() {
    return Set.copyOf(permissions);
  }
}
