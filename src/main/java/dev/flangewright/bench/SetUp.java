package dev.flangewright.bench;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is clamped for a stage: a block of a set.
 *
 * @param blockStage which of several blocks of the kind, from 1
 */
record SetUp(String blockSet, String kind, int blockStage) {

  /** Empty where the part names no set or the stage needs no block. */
  static Optional<SetUp> of(
      String blockSet, @Nullable String needsBlock, @Nullable Integer blockStage) {
    return blockSet.isBlank() || needsBlock == null
        ? Optional.empty()
        : Optional.of(new SetUp(blockSet, needsBlock, blockStage == null ? 1 : blockStage));
  }

  static Optional<SetUp> of(String blockSet, StageCard stage) {
    return of(blockSet, stage.needsBlock(), stage.blockStage());
  }
}
