package dev.flangewright.quality;

import dev.flangewright.bench.PieceEvent;
import dev.flangewright.bench.PieceEvents;
import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Tells on the time line of a piece what inspections decided. */
@Component
@Order(20)
class InspectionEvents implements PieceEvents {

  private final Inspections inspections;

  InspectionEvents(Inspections inspections) {
    this.inspections = inspections;
  }

  @Override
  public List<PieceEvent> of(long pieceId) {
    return inspections.findByPieceIdOrderById(pieceId).stream()
        .map(one -> new PieceEvent(one.doneAt(), one.who(), InspectionLine.what(one), one.note()))
        .toList();
  }
}
