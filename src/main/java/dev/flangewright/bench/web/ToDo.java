package dev.flangewright.bench.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.PieceState;
import java.util.Optional;

/** The one thing to do now on a piece. */
enum ToDo {
  START,
  FINISH,
  CHECK,
  INSPECT,
  BEGIN_ANOTHER,
  NOTHING;

  static ToDo on(Piece piece, Optional<PieceStage> current) {
    if (piece.state() == PieceState.SCRAPPED) {
      return BEGIN_ANOTHER;
    }
    return current.map(ToDo::at).orElse(NOTHING);
  }

  private static ToDo at(PieceStage stage) {
    if (stage.kind().byInspection()) {
      return INSPECT;
    }
    if (!stage.isStarted()) {
      return START;
    }
    return stage.waitsForCheck() ? CHECK : FINISH;
  }
}
