package dev.flangewright.bench;

import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Keeps a piece from being cut while no recorded batch of its metal may be used. */
@Component
class MetalGate implements StageGate {

  private final MetalForCut metal;

  MetalGate(MetalForCut metal) {
    this.metal = metal;
  }

  @Override
  public Optional<StageBar> bar(Piece piece, PieceStage stage, Instant at) {
    return stage.kind() == StageKind.CUT && piece.batch() == null
        ? metal.lacking(piece).map(missing -> new StageBar(missing, CutWords.RELEASED_BY))
        : Optional.empty();
  }
}
