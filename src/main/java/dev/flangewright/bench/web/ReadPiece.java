package dev.flangewright.bench.web;

import dev.flangewright.bench.Pieces;
import dev.flangewright.heat.FormingWindows;
import dev.flangewright.people.Refused;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Reads a piece for an answer, in a transaction of its own: after an entry is stored, so that the
 * version told is the one to send back.
 */
@Component
class ReadPiece {

  private final Pieces pieces;
  private final FormingWindows windows;
  private final Clock clock;

  ReadPiece(Pieces pieces, FormingWindows windows, Clock clock) {
    this.pieces = pieces;
    this.windows = windows;
    this.clock = clock;
  }

  @Transactional(readOnly = true)
  PieceAnswer of(long id) {
    return pieces
        .findById(id)
        .map(piece -> PieceAnswer.of(piece, window(id)))
        .orElseThrow(() -> Refused.unknown("piece", id));
  }

  private @Nullable WindowAnswer window(long pieceId) {
    return windows
        .ofPiece(pieceId, clock.instant())
        .map(window -> WindowAnswer.of(window, clock.instant()))
        .orElse(null);
  }
}
