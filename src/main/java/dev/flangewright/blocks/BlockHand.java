package dev.flangewright.blocks;

import java.util.Locale;

/** Which hand of a mirrored pair is formed on a set; on a reversible one, turned over, both. */
public enum BlockHand {
  LEFT,
  RIGHT,
  REVERSIBLE;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
