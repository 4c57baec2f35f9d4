package dev.flangewright.bench;

import java.util.List;

/** What a module knows to have happened to a piece; the time line of the piece shows it. */
public interface PieceEvents {

  /** In any order. */
  List<PieceEvent> of(long pieceId);
}
