package dev.flangewright.bench;

import dev.flangewright.stock.PiecesCut;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Tells the stock which pieces were cut from its batches. */
@Component
class PiecesCutFrom implements PiecesCut {

  private final Pieces pieces;

  PiecesCutFrom(Pieces pieces) {
    this.pieces = pieces;
  }

  @Override
  public Map<Long, Long> counts(long buildId) {
    return pieces.countByBatch(buildId).stream()
        .collect(Collectors.toMap(row -> (Long) row[0], row -> (Long) row[1]));
  }

  @Override
  public List<CutPiece> of(long batchId) {
    return pieces.cutFrom(batchId).stream().map(PiecesCutFrom::cut).toList();
  }

  private static CutPiece cut(Piece piece) {
    String stage = piece.state() == PieceState.IN_WORK ? piece.currentStageName() : null;
    return new CutPiece(
        piece.id(),
        piece.part().id(),
        piece.part().partNumber(),
        piece.number(),
        piece.held() ? "HELD" : piece.state().name(),
        stage == null ? "" : InWords.within(stage));
  }
}
