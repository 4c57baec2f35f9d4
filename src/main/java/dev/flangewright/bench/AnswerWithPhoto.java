package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import dev.flangewright.photos.KeepPhotos;
import dev.flangewright.photos.Photo;
import dev.flangewright.photos.SubjectKind;
import dev.flangewright.photos.TakenPhoto;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Answers a check with a photo taken for it: the photo is one of the piece, its caption the
 * question. If the answer is refused, the photo is not kept either.
 */
@Service
public class AnswerWithPhoto {

  private final Pieces pieces;
  private final KeepPhotos photos;
  private final LogStage log;

  AnswerWithPhoto(Pieces pieces, KeepPhotos photos, LogStage log) {
    this.pieces = pieces;
    this.photos = photos;
    this.log = log;
  }

  /**
   * @param seen the version of the piece that the person saw, or null
   */
  @PreAuthorize("hasAnyAuthority('LOG_WORK', 'RELEASE_HOLD')")
  @Transactional
  public Piece of(
      long pieceId,
      String code,
      String checkCode,
      TakenPhoto taken,
      @Nullable Long seen,
      String note) {
    Piece piece = pieces.findToChange(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    String question = piece.stage(code).question(checkCode);
    Photo photo = photos.add(SubjectKind.PIECE, pieceId, taken, question);
    return log.answer(pieceId, code, checkCode, Answer.ofPhoto(photo.id()), seen, note);
  }
}
