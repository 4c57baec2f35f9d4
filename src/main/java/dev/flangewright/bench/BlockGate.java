package dev.flangewright.bench;

import dev.flangewright.blocks.BlockReadiness;
import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Keeps a stage from starting while the block that the route asks for is not ready. */
@Component
class BlockGate implements StageGate {

  private final BlockReadiness blocks;

  BlockGate(BlockReadiness blocks) {
    this.blocks = blocks;
  }

  @Override
  public Optional<StageBar> bar(Piece piece, PieceStage stage, Instant at) {
    return stage
        .card()
        .blockNeed()
        .flatMap(need -> blocks.notReady(piece.part(), need.kind(), need.formingStage()))
        .map(missing -> new StageBar(missing, "whoever keeps the blocks"));
  }
}
