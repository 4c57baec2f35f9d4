package dev.flangewright.parts;

/** Which hand of a mirrored pair a part is. */
public enum Hand {
  LEFT,
  RIGHT,
  NONE;

  /** The word in files and on pages. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
