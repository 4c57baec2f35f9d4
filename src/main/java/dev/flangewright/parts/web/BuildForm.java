package dev.flangewright.parts.web;

import java.util.Objects;

/** What a build is called. */
record BuildForm(String name, String note) {

  /** A field that was not sent at all counts as empty. */
  BuildForm {
    name = Objects.requireNonNullElse(name, "");
    note = Objects.requireNonNullElse(note, "");
  }
}
