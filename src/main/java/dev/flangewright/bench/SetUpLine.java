package dev.flangewright.bench;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A stage over a block that lies begun or was finished today: one row of one query. */
record SetUpLine(
    long partId,
    String blockSet,
    String needsBlock,
    @Nullable Integer blockStage,
    String startedBy,
    Instant startedAt,
    @Nullable Instant finishedAt) {

  boolean isFinished() {
    return finishedAt != null;
  }

  Optional<SetUp> setUp() {
    return SetUp.of(blockSet, needsBlock, blockStage);
  }
}
