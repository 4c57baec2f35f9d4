package dev.flangewright.bench.web;

import dev.flangewright.bench.MetalForCut;
import dev.flangewright.bench.PiecePanel;
import dev.flangewright.bench.Pieces;
import dev.flangewright.people.Refused;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Shows on the page of a piece which batch it was cut from, and offers what it may be cut from. */
@Component
@Order(10)
class MetalPanel implements PiecePanel {

  private final Pieces pieces;
  private final MetalForCut metal;

  MetalPanel(Pieces pieces, MetalForCut metal) {
    this.pieces = pieces;
    this.metal = metal;
  }

  @Override
  public String template() {
    return "bench/_metal :: ofPiece";
  }

  @Override
  @Transactional(readOnly = true)
  public Map<String, Object> model(long pieceId) {
    return Map.of(
        "metal",
        pieces
            .findById(pieceId)
            .map(piece -> MetalView.of(piece, metal))
            .orElseThrow(() -> Refused.unknown("piece", pieceId)));
  }
}
