package dev.flangewright.drawing;

import java.util.Locale;

/** Which end of a line of lettering stands at its spot. */
public enum Anchor {
  START,
  MIDDLE,
  END;

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
