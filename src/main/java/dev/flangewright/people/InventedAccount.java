package dev.flangewright.people;

import java.util.Arrays;
import java.util.List;

/** An account of the demo: one a role, with a password that everybody knows. */
public record InventedAccount(String name, Role role, String password) {

  private static final String PASSWORD_PREFIX = "tidewing-";

  /** All of them. */
  public static List<InventedAccount> all() {
    return Arrays.stream(Role.values())
        .map(role -> new InventedAccount(role.word(), role, PASSWORD_PREFIX + role.word()))
        .toList();
  }
}
