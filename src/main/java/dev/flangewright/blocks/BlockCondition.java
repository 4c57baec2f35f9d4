package dev.flangewright.blocks;

/** How it stands with a block. */
public enum BlockCondition {
  TO_MAKE("to make"),
  READY("ready"),
  /** Taken from its place, fit for work. */
  IN_USE("in use"),
  NEEDS_REPAIR("needs repair"),
  SCRAPPED("scrapped");

  private final String word;

  BlockCondition(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** Whether metal may be formed, routed or drilled on it. */
  public boolean isFit() {
    return this == READY || this == IN_USE;
  }
}
