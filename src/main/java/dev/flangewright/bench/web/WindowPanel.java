package dev.flangewright.bench.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PiecePanel;
import dev.flangewright.bench.Pieces;
import dev.flangewright.heat.FormingWindows;
import dev.flangewright.people.Refused;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Shows on the page of a piece how long it stays soft after the quench. */
@Component
@Order(1)
class WindowPanel implements PiecePanel {

  private final Pieces pieces;
  private final FormingWindows windows;
  private final Clock clock;

  WindowPanel(Pieces pieces, FormingWindows windows, Clock clock) {
    this.pieces = pieces;
    this.windows = windows;
    this.clock = clock;
  }

  @Override
  public String template() {
    return "heat/_window :: panel";
  }

  @Override
  public Map<String, Object> model(long pieceId) {
    Instant now = clock.instant();
    Piece piece = pieces.findById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    return Map.of("heat", WindowView.of(piece, windows.ofPiece(pieceId, now), now));
  }
}
