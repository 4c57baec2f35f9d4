package dev.flangewright.bench;

import java.time.Instant;
import java.util.Optional;

/**
 * Something outside the route that a stage waits for: a block, metal, time. Every bean of this type
 * is asked before a stage starts, and by the page of the piece.
 */
interface StageGate {

  /**
   * @param at when the stage is started; earlier than now if it was logged where no network was
   * @return what stands in the way; empty if nothing does
   */
  Optional<StageBar> bar(Piece piece, PieceStage stage, Instant at);
}
