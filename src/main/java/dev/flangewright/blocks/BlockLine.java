package dev.flangewright.blocks;

/** A block as lists read it. */
public record BlockLine(
    long id, String setCode, BlockKind kind, int formingStage, BlockCondition condition) {

  boolean isFor(BlockKind wanted, int stage) {
    return kind == wanted && (!wanted.isStaged() || formingStage == stage);
  }
}
