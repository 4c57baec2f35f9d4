package dev.flangewright.bench;

import dev.flangewright.parts.Build;
import dev.flangewright.photos.PhotoSubject;
import dev.flangewright.photos.Photographed;
import dev.flangewright.photos.SubjectKind;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Says which pieces can be photographed: all. */
@Component
class PhotographedPiece implements Photographed {

  private final Pieces pieces;

  PhotographedPiece(Pieces pieces) {
    this.pieces = pieces;
  }

  @Override
  public SubjectKind kind() {
    return SubjectKind.PIECE;
  }

  @Override
  @Transactional(readOnly = true)
  public Optional<PhotoSubject> find(long pieceId) {
    return pieces.findWithPartById(pieceId).map(PhotographedPiece::subject);
  }

  private static PhotoSubject subject(Piece piece) {
    Build build = piece.part().build();
    return new PhotoSubject(build.id(), build.name(), piece.label(), "/pieces/" + piece.id());
  }
}
