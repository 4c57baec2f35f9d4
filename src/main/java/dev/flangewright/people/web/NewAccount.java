package dev.flangewright.people.web;

import dev.flangewright.people.Role;
import org.jspecify.annotations.Nullable;

/** The form that adds an account. */
record NewAccount(@Nullable String name, @Nullable Role role, @Nullable String password) {

  static NewAccount empty() {
    return new NewAccount("", Role.VOLUNTEER, "");
  }

  /** As it was sent, but without the password, to be shown again. */
  NewAccount toShow() {
    return new NewAccount(name, role, "");
  }
}
