package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartSheetPanel;
import java.util.List;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Shows the pieces of a part on its sheet, and offers to begin the next one. */
@Component
@Order(10)
class PiecesOfPart implements PartSheetPanel {

  private final Pieces pieces;
  private final Twins twins;

  PiecesOfPart(Pieces pieces, Twins twins) {
    this.pieces = pieces;
    this.twins = twins;
  }

  @Override
  public String template() {
    return "bench/_pieces :: panel";
  }

  @Override
  @Transactional(readOnly = true)
  public Map<String, Object> model(long partId) {
    List<Piece> all = pieces.findByPartIdOrderByNumber(partId);
    boolean inWork = all.stream().anyMatch(piece -> piece.state() == PieceState.IN_WORK);
    int next = all.isEmpty() ? 1 : all.get(all.size() - 1).number() + 1;
    return Map.of(
        "benchPartId", partId,
        "benchPieces", all.stream().map(PieceLink::of).toList(),
        "benchNextNumber", next,
        "benchMayBegin", !inWork,
        "benchTwin", inWork ? "" : twin(partId));
  }

  /** The other hand, if a piece of it can be begun too; otherwise empty. */
  private String twin(long partId) {
    return twins
        .of(partId)
        .filter(twin -> !pieces.existsByPartIdAndState(twin.id(), PieceState.IN_WORK))
        .map(Part::partNumber)
        .orElse("");
  }

  /** One line of the panel. */
  record PieceLink(long id, int number, String mark, String stage, String done) {

    static PieceLink of(Piece piece) {
      String stage = piece.currentStageName();
      return new PieceLink(
          piece.id(),
          piece.number(),
          piece.held() ? "HELD" : piece.state().name(),
          stage == null ? "" : stage,
          piece.stagesDone() + " of " + piece.stagesTotal());
    }
  }
}
