package dev.flangewright.quality;

import dev.flangewright.bench.PiecePanel;
import java.time.Clock;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Shows on the page of a piece what inspections found on it. */
@Component
class InspectionsOfPiece implements PiecePanel {

  private final Inspections inspections;
  private final Clock clock;

  InspectionsOfPiece(Inspections inspections, Clock clock) {
    this.inspections = inspections;
    this.clock = clock;
  }

  @Override
  public String template() {
    return "quality/_inspections :: ofPiece";
  }

  @Override
  @Transactional(readOnly = true)
  public Map<String, Object> model(long pieceId) {
    return Map.of(
        "qualityInspections",
        inspections.findByPieceIdOrderById(pieceId).stream()
            .map(inspection -> InspectionLine.of(inspection, clock.instant()))
            .toList());
  }
}
