package dev.flangewright.bench.web;

import dev.flangewright.people.Refused;

/** Degrees Celsius as typed: {@code −20}, {@code -20.5} or {@code -20,5}. */
final class Celsius {

  private Celsius() {}

  /**
   * @throws Refused if nothing was typed, or no number
   */
  static double read(String typed) {
    try {
      return Double.parseDouble(typed.strip().replace('−', '-').replace(',', '.'));
    } catch (NumberFormatException e) {
      throw Refused.unacceptable(
          "The temperature of the freezer is missing or cannot be read; write it as -20.");
    }
  }
}
