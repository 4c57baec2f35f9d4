package dev.flangewright.bench;

import dev.flangewright.heat.FormingWindows;
import dev.flangewright.heat.HeatEvent;
import dev.flangewright.heat.Told;
import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Tells of the quench, the freezer and the lead's leave. */
@Component
@Order(15)
class QuenchEvents implements PieceEvents {

  private final FormingWindows windows;

  QuenchEvents(FormingWindows windows) {
    this.windows = windows;
  }

  @Override
  public List<PieceEvent> of(long pieceId) {
    return windows.eventsOf(pieceId).stream().map(QuenchEvents::event).toList();
  }

  private static PieceEvent event(HeatEvent event) {
    Told told = event.told();
    return new PieceEvent(
        told.at(), told.who(), event.what(), told.note(), event.takenBack(), told.receivedAt());
  }
}
