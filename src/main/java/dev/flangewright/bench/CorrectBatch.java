package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Puts down later, or anew, which batch a piece was cut from. It may be one that is held back or
 * used up by now: the record is to say what was done.
 */
@Service
public class CorrectBatch {

  private final Pieces pieces;
  private final MetalForCut metal;
  private final DoneAt doneAt;

  CorrectBatch(Pieces pieces, MetalForCut metal, DoneAt doneAt) {
    this.pieces = pieces;
    this.metal = metal;
    this.doneAt = doneAt;
  }

  /**
   * @param seen the version of the piece that the person saw, or null
   * @throws Refused if the build has no such batch, it is of another metal, the reason is missing,
   *     or somebody else was quicker
   */
  @PreAuthorize("hasAuthority('INSPECT')")
  @Transactional
  public Piece of(long pieceId, String mark, @Nullable Long seen, String reason) {
    Piece piece = pieces.findToChange(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    piece.refuseIfStale(seen);
    if (mark.isBlank()) {
      throw Refused.unacceptable("batch is missing: say which one it was cut from.");
    }
    piece.setBatch(
        metal.known(piece, mark), doneAt.signature(piece, piece.cutStage().code(), reason));
    return piece;
  }
}
