package dev.flangewright.bench.web;

import dev.flangewright.bench.Pieces;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Reads a piece for an answer, in a transaction of its own: after an entry is stored, so that the
 * version told is the one to send back.
 */
@Component
class ReadPiece {

  private final Pieces pieces;

  ReadPiece(Pieces pieces) {
    this.pieces = pieces;
  }

  @Transactional(readOnly = true)
  PieceAnswer of(long id) {
    return pieces.findById(id).map(PieceAnswer::of).orElseThrow(() -> Refused.unknown("piece", id));
  }
}
