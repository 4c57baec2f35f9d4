package dev.flangewright.blocks;

/** What a block or template of a set is for. */
public enum BlockKind {
  /** The flange is turned over it; a hard flange may need one a stage. */
  FORM_BLOCK("form block"),
  /** Clamps the web on the form block. */
  BACKING_BLOCK("backing block"),
  /** The blank is routed round it. */
  ROUTER_TEMPLATE("router template"),
  /** Holes are drilled through it. */
  DRILL_TEMPLATE("drill template");

  private final String word;

  BlockKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** With the stage, where there is one: {@code "form block, stage 1"}. */
  public String named(int formingStage) {
    return formingStage == 0 ? word : word + ", stage " + formingStage;
  }

  /** Whether such a block serves one forming stage; the others serve them all. */
  public boolean isStaged() {
    return this == FORM_BLOCK;
  }
}
