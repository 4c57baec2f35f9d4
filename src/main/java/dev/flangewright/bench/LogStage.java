package dev.flangewright.bench;

import dev.flangewright.people.MayLogWork;
import dev.flangewright.people.MayReleaseHold;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
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
  private final DoneAt doneAt;

  LogStage(
      Pieces pieces,
      StageClearance clearance,
      StageGates gates,
      BlockDamage damage,
      DoneAt doneAt) {
    this.pieces = pieces;
    this.clearance = clearance;
    this.gates = gates;
    this.damage = damage;
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
    return finish(pieceId, code, hours, "", seen, note);
  }

  /**
   * Finishes a stage.
   *
   * @param blockDamage what was damaged on the block that it was done on; empty if nothing was
   */
  @MayLogWork
  public Piece finish(
      long pieceId,
      String code,
      @Nullable Double hours,
      String blockDamage,
      @Nullable Long seen,
      String note) {
    Piece piece = find(pieceId, seen);
    PieceStage stage = piece.stage(code);
    clearance.refuseUnlessHeld(stage);
    StageEntry entry = piece.finish(code, hours, doneAt.signature(piece, code, note));
    if (!blockDamage.isBlank()) {
      entry.says(damage.report(piece, stage, blockDamage));
    }
    return piece;
  }

  /**
   * @throws AccessDeniedException if the account may not make an entry of the kind it takes back
   */
  @PreAuthorize("hasAnyAuthority('LOG_WORK', 'RELEASE_HOLD')")
  public Piece undo(long pieceId, @Nullable Long seen, String reason) {
    Piece piece = find(pieceId, seen);
    piece.undoable().ifPresent(LogStage::refuseUnlessAllowed);
    String undone = piece.undoable().map(StageEntry::stageCode).orElse("");
    piece.undo(doneAt.signature(piece, undone, reason));
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
