package dev.flangewright.records.archive;

import java.util.Objects;

/** This program. */
final class Program {

  private Program() {}

  /** As the jar says; a program that was not packaged has none. */
  static String version() {
    String version = Program.class.getPackage().getImplementationVersion();
    return Objects.requireNonNullElse(version, "unpackaged");
  }
}
