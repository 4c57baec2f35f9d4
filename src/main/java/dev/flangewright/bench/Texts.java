package dev.flangewright.bench;

import dev.flangewright.people.Refused;

/** Texts as typed in the route editor, kept in bounds. */
final class Texts {

  private Texts() {}

  /**
   * @return the text without spaces around it
   * @throws Refused naming the field if it has fewer or more characters
   */
  static String of(String field, String typed, int least, int most) {
    String clean = typed.strip();
    if (clean.length() < least || clean.length() > most) {
      throw Refused.unacceptable(field + " needs " + least + " to " + most + " characters.");
    }
    return clean;
  }
}
