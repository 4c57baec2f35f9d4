package dev.flangewright.quality;

import dev.flangewright.bench.PiecePanel;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Shows on the page of a piece what inspections found on it. */
@Component
class InspectionsOfPiece implements PiecePanel {

  private final Inspections inspections;
  private final ListInspections list;

  InspectionsOfPiece(Inspections inspections, ListInspections list) {
    this.inspections = inspections;
    this.list = list;
  }

  @Override
  public String template() {
    return "quality/_inspections :: ofPiece";
  }

  @Override
  @Transactional(readOnly = true)
  public Map<String, Object> model(long pieceId) {
    return Map.of("qualityInspections", list.lines(inspections.findByPieceIdOrderById(pieceId)));
  }
}
