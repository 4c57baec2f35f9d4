package dev.flangewright.bench;

import java.util.Arrays;
import java.util.List;

/** How a check of a stage is answered. */
public enum CheckKind {
  YES_NO("yes or no"),
  NUMBER("a number"),
  /** Kept for routes to come: photos are not stored yet, so no check can ask for one. */
  PHOTO("a photo");

  private final String words;

  CheckKind(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** True if the program can keep an answer of this kind. */
  public boolean isOffered() {
    return this != PHOTO;
  }

  /** The kinds that a route may ask for. */
  public static List<CheckKind> offered() {
    return Arrays.stream(values()).filter(CheckKind::isOffered).toList();
  }
}
