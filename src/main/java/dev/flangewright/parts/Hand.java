package dev.flangewright.parts;

import java.util.Locale;

/** Which hand of a mirrored pair a part is. */
public enum Hand {
  LEFT,
  RIGHT,
  NONE;

  /** The word in files and on pages. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
