package dev.flangewright.bench;

import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.parts.GaugeKind;
import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Tells what was gauged on a piece. */
@Component
@Order(20)
class ReadingEvents implements PieceEvents {

  private final GaugeLogs readings;

  ReadingEvents(GaugeLogs readings) {
    this.readings = readings;
  }

  @Override
  public List<PieceEvent> of(long pieceId) {
    return readings.findByPieceIdOrderById(pieceId).stream().map(ReadingEvents::event).toList();
  }

  private static PieceEvent event(GaugeLog reading) {
    GaugeEntry written = reading.written();
    String what =
        "read %s on the %s edge: %s"
            .formatted(
                written.reading(), written.flange(), GaugeKind.named(written.gauge()).withWhat());
    return new PieceEvent(reading.readAt(), reading.who(), what, reading.answer());
  }
}
