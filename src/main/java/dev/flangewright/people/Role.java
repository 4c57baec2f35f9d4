package dev.flangewright.people;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** What an account is for, and with it what its holder may do. */
public enum Role {
  LEAD("lead", EnumSet.allOf(Permission.class), EnumSet.allOf(Clearance.class)),
  FITTER(
      "fitter",
      EnumSet.of(
          Permission.KEEP_BLOCKS, Permission.KEEP_STOCK, Permission.LOG_WORK, Permission.SCRAP),
      EnumSet.of(
          Clearance.CUT, Clearance.FORM_SHRINK, Clearance.FORM_STRETCH, Clearance.HEAT_TREAT)),
  VOLUNTEER(
      "volunteer",
      EnumSet.of(Permission.LOG_WORK),
      EnumSet.of(Clearance.CUT, Clearance.FORM_SHRINK, Clearance.FORM_STRETCH)),
  INSPECTOR(
      "inspector",
      EnumSet.of(
          Permission.RELEASE_HOLD, Permission.SCRAP, Permission.INSPECT, Permission.READ_JOURNAL),
      EnumSet.of(Clearance.INSPECT)),
  MANAGER(
      "manager",
      EnumSet.of(Permission.EDIT_REGISTER, Permission.READ_JOURNAL),
      EnumSet.of(Clearance.MANAGE)),
  GUEST("guest", EnumSet.noneOf(Permission.class), EnumSet.noneOf(Clearance.class));

  private final String word;
  private final Set<Permission> permissions;
  private final Set<Clearance> clearances;

  Role(String word, Set<Permission> permissions, Set<Clearance> clearances) {
    this.word = word;
    this.permissions = permissions;
    this.clearances = clearances;
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

  /** What an account of this role is cleared for to begin with; the lead changes it. */
  public Set<Clearance> clearances() {
    return Set.copyOf(clearances);
  }

  public String clearedInWords() {
    return Clearance.inWords(clearances);
  }

  /** The names by which the security framework knows what this role may do and is cleared for. */
  public String[] authorities() {
    return Authorities.of(permissions, clearances);
  }
}
