package dev.flangewright.people;

import java.util.Collection;
import java.util.stream.Collectors;

/**
 * One sort of work that somebody has been shown and is trusted with. A role says what an account
 * may do in the program; a clearance says what its holder may do to the metal.
 */
public enum Clearance {
  CUT("cut"),
  FORM_SHRINK("form shrink flanges"),
  FORM_STRETCH("form stretch flanges"),
  HEAT_TREAT("heat treat"),
  INSPECT("inspect"),
  MANAGE("manage");

  private final String words;

  Clearance(String words) {
    this.words = words;
  }

  /** What it lets one do, as it follows "cleared to". */
  public String words() {
    return words;
  }

  /** All of them in one list of words, always in the same order. */
  static String inWords(Collection<Clearance> clearances) {
    return clearances.stream().sorted().map(Clearance::words).collect(Collectors.joining(", "));
  }

  /** Its name among the authorities of whoever is signed in. */
  String authority() {
    return "CLEARED_" + name();
  }
}
