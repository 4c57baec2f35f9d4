package dev.flangewright.bench.web;

import dev.flangewright.bench.MetalForCut;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.StageKind;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchCondition;
import dev.flangewright.stock.BatchLine;
import java.util.List;

/**
 * The metal of a piece.
 *
 * @param batchId of the batch that it was cut from; 0 if none is recorded
 * @param batch its name; empty if none is recorded
 * @param certificate its certificate's number; empty where not known
 * @param heldBack whether that batch is held back by now
 * @param cuts codes of the stages that ask which batch it is cut from
 * @param offered the batches that it may be cut from
 * @param ofItsMetal every batch of its metal, from which an inspector puts the record right
 */
record MetalView(
    long batchId,
    String batch,
    String certificate,
    boolean heldBack,
    List<String> cuts,
    List<BatchLine> offered,
    List<BatchLine> ofItsMetal) {

  static MetalView of(Piece piece, MetalForCut metal) {
    Batch cut = piece.batch();
    return new MetalView(
        cut == null ? 0 : cut.id(),
        cut == null ? "" : cut.name(),
        cut == null ? "" : cut.facts().certificate(),
        cut != null && cut.condition() == BatchCondition.HELD_BACK,
        cut == null ? cuts(piece) : List.of(),
        cut == null ? metal.offered(piece) : List.of(),
        metal.ofItsMetal(piece));
  }

  private static List<String> cuts(Piece piece) {
    return piece.stages().stream()
        .filter(stage -> stage.kind() == StageKind.CUT)
        .map(PieceStage::code)
        .toList();
  }

  /** Whether the finish form of that stage offers batches. */
  public boolean isAskedAt(String stage) {
    return cuts.contains(stage) && !offered.isEmpty();
  }
}
