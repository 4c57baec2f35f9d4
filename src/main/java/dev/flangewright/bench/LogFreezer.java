package dev.flangewright.bench;

import dev.flangewright.heat.FormingWindows;
import dev.flangewright.heat.LogHeat;
import dev.flangewright.heat.Told;
import dev.flangewright.people.MayLetFormLate;
import dev.flangewright.people.MayLogWork;
import dev.flangewright.people.Refused;
import java.time.Clock;
import java.time.Instant;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Logs what happens to a piece between the quench and the forming after it. */
@Service
@Transactional
public class LogFreezer {

  private final Pieces pieces;
  private final StageClearance clearance;
  private final LogHeat heat;
  private final FormingWindows windows;
  private final DoneAt doneAt;
  private final Clock clock;

  LogFreezer(
      Pieces pieces,
      StageClearance clearance,
      LogHeat heat,
      FormingWindows windows,
      DoneAt doneAt,
      Clock clock) {
    this.pieces = pieces;
    this.clearance = clearance;
    this.heat = heat;
    this.windows = windows;
    this.doneAt = doneAt;
    this.clock = clock;
  }

  /**
   * @param celsius of the freezer, as it shows it
   * @throws Refused if the piece was not quenched, is in the freezer, or its window is past
   */
  @MayLogWork
  public void into(long pieceId, double celsius, String note) {
    Piece piece = find(pieceId);
    heat.intoFreezer(pieceId, celsius, told(piece, treated(piece), note));
  }

  /**
   * @throws Refused if it is not in the freezer
   */
  @MayLogWork
  public void out(long pieceId, String note) {
    Piece piece = find(pieceId);
    heat.outOfFreezer(pieceId, told(piece, treated(piece), note));
  }

  /**
   * Lets a piece be formed past its window.
   *
   * @throws Refused if the window is not past or the reason is missing
   */
  @MayLetFormLate
  public void letBeFormedLate(long pieceId, String reason) {
    Piece piece = find(pieceId);
    heat.letBeFormedLate(pieceId, told(piece, treated(piece), reason));
  }

  /**
   * Tells when a piece was quenched whose heat treatment was finished without saying it.
   *
   * @throws Refused if a quench is known, the time cannot be, or the account is not cleared for the
   *     heat treatment
   */
  @MayLogWork
  public void quenched(long pieceId, Instant quenchedAt, String note) {
    Piece piece = find(pieceId);
    PieceStage treated = treated(piece);
    clearance.refuseUnlessHeld(treated);
    if (windows.ofPiece(pieceId, clock.instant()).isPresent()) {
      throw Refused.conflict(
          "A quench of it is known already. If its time is wrong, the finish of the heat treatment"
              + " is taken back and logged again.");
    }
    heat.quenched(
        QuenchOfStage.of(piece), quenchedAt, told(piece, treated, note), piece.log().size());
  }

  private Piece find(long pieceId) {
    Piece piece = pieces.findToChange(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    if (piece.state() != PieceState.IN_WORK) {
      throw StageRefusal.pieceIsDone(piece);
    }
    return piece;
  }

  private static PieceStage treated(Piece piece) {
    return HeatRoute.of(piece)
        .treated()
        .orElseThrow(
            () -> Refused.conflict("No heat treatment of " + piece.label() + " is finished."));
  }

  private Told told(Piece piece, PieceStage treated, String note) {
    return QuenchOfStage.told(doneAt.signature(piece, treated.code(), note));
  }
}
