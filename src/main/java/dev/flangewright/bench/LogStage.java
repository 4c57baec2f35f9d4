package dev.flangewright.bench;

import dev.flangewright.people.MayLogWork;
import dev.flangewright.people.MayReleaseHold;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import dev.flangewright.photos.ReadPhotos;
import dev.flangewright.photos.SubjectKind;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Logs work on a piece. Each call takes the version of the piece that the person saw, or null, and
 * is refused if somebody else was quicker. Starting and finishing a stage takes the clearance that
 * the route asks for.
 */
@Service
@Transactional
public class LogStage {

  private final Pieces pieces;
  private final StageClearance clearance;
  private final StageGates gates;
  private final BlockDamage damage;
  private final QuenchOfStage quench;
  private final ReadPhotos photos;
  private final MetalForCut metal;
  private final DoneAt doneAt;

  LogStage(
      Pieces pieces,
      StageClearance clearance,
      StageGates gates,
      BlockDamage damage,
      QuenchOfStage quench,
      ReadPhotos photos,
      MetalForCut metal,
      DoneAt doneAt) {
    this.pieces = pieces;
    this.clearance = clearance;
    this.gates = gates;
    this.damage = damage;
    this.quench = quench;
    this.photos = photos;
    this.metal = metal;
    this.doneAt = doneAt;
  }

  @MayLogWork
  public Piece start(long pieceId, String code, @Nullable Long seen, String note) {
    Piece piece = find(pieceId, seen);
    Signature by = doneAt.signature(piece, code, note);
    clearance.refuseUnlessHeld(piece.stage(code));
    piece.refuseUnlessOpen(code); // what the route says comes before what the workshop lacks
    gates.refuseIfBarred(piece, piece.stage(code), by.at());
    piece.start(code, by);
    return piece;
  }

  @MayReleaseHold
  public Piece check(long pieceId, String code, @Nullable Long seen, String note) {
    Piece piece = find(pieceId, seen);
    piece.check(code, doneAt.signature(piece, code, note));
    return piece;
  }

  /** Answers one of the checks of a stage. */
  @PreAuthorize("hasAnyAuthority('LOG_WORK', 'RELEASE_HOLD')")
  public Piece answer(
      long pieceId,
      String code,
      String checkCode,
      Answer answer,
      @Nullable Long seen,
      String note) {
    Piece piece = find(pieceId, seen);
    Long photo = answer.photo();
    if (photo != null) {
      photos.refuseUnlessOf(SubjectKind.PIECE, pieceId, photo);
    }
    piece.answer(code, checkCode, answer, doneAt.signature(piece, code, note));
    return piece;
  }

  /** Lets a check pass that was not met. */
  @MayReleaseHold
  public Piece letPass(
      long pieceId, String code, String checkCode, @Nullable Long seen, String note) {
    Piece piece = find(pieceId, seen);
    piece.letPass(code, checkCode, doneAt.signature(piece, code, note));
    return piece;
  }

  @MayLogWork
  public Piece finish(
      long pieceId, String code, @Nullable Double hours, @Nullable Long seen, String note) {
    return finish(pieceId, code, seen, WorkDone.in(hours, note));
  }

  /** Finishes a stage, with all that may be told of it. */
  @MayLogWork
  public Piece finish(long pieceId, String code, @Nullable Long seen, WorkDone done) {
    Piece piece = find(pieceId, seen);
    PieceStage stage = piece.stage(code);
    clearance.refuseUnlessHeld(stage);
    Signature by = doneAt.signature(piece, code, done.note());
    StageEntry entry = piece.finish(code, done.hours(), by);
    quench.finished(piece, stage, done.quenching(), by);
    metal.chosen(piece, stage, done.batch()).ifPresent(batch -> piece.isCutFrom(batch, entry));
    if (!done.blockDamage().isBlank()) {
      entry.says(damage.report(piece, stage, done.blockDamage()));
    }
    return piece;
  }

  /**
   * @throws AccessDeniedException if the account may not make an entry of the kind it takes back
   */
  @PreAuthorize("hasAnyAuthority('LOG_WORK', 'RELEASE_HOLD')")
  public Piece undo(long pieceId, @Nullable Long seen, String reason) {
    Piece piece = find(pieceId, seen);
    Optional<StageEntry> last = piece.undoable();
    last.ifPresent(LogStage::refuseUnlessAllowed);
    String undone = last.map(StageEntry::stageCode).orElse("");
    piece.undo(doneAt.signature(piece, undone, reason));
    last.ifPresent(taken -> quench.undone(piece, taken));
    return piece;
  }

  private static void refuseUnlessAllowed(StageEntry last) {
    if (!last.canBeTakenBackBy(SignedIn::may)) {
      throw new AccessDeniedException("This account may not make a " + last.action() + " entry");
    }
  }

  private Piece find(long pieceId, @Nullable Long seen) {
    Piece piece = pieces.findToChange(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    piece.refuseIfStale(seen);
    return piece;
  }
}
