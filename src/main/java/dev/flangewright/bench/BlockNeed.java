package dev.flangewright.bench;

import dev.flangewright.blocks.BlockKind;

/**
 * The block or template that a stage is done on.
 *
 * @param formingStage which of a flange's stages of form blocks, from 1; the second flange of a
 *     part lies on the same block as the first, so it is stage 1 too unless the route says
 *     otherwise
 */
public record BlockNeed(BlockKind kind, int formingStage) {

  /** {@code "form block, stage 1"}. */
  public String inWords() {
    return kind.named(kind.isStaged() ? formingStage : 0);
  }
}
