package dev.flangewright.heat;

import dev.flangewright.people.MayLetFormLate;
import dev.flangewright.people.MayLogWork;
import dev.flangewright.people.Refused;
import java.time.Instant;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes down quenches and what follows. Whoever calls has made sure that the piece is in work. */
@Service
@Transactional
public class LogHeat {

  private final Quenches quenches;
  private final FormingWindows windows;

  LogHeat(Quenches quenches, FormingWindows windows) {
    this.quenches = quenches;
    this.windows = windows;
  }

  /**
   * A quench: a new window begins.
   *
   * @param logLine how long the log of the piece is now, the line that tells it included
   * @throws Refused if the time cannot be
   */
  @MayLogWork
  public void quenched(QuenchedPiece piece, Instant quenchedAt, Told by, int logLine) {
    Quench next = new Quench(piece, quenchedAt, by, logLine);
    quenches
        .findFirstByPieceIdAndTakenBackFalseOrderByQuenchedAtDesc(piece.pieceId())
        .ifPresent(last -> last.refuseUnlessBefore(next.quenchedAt()));
    quenches.save(next);
  }

  /**
   * A line of the piece's log was taken back: a quench told by it, or later, is as if it had never
   * been.
   */
  @MayLogWork
  public void takeBack(long pieceId, int logLine) {
    quenches
        .findFirstByPieceIdAndTakenBackFalseOrderByQuenchedAtDesc(pieceId)
        .ifPresent(last -> last.isTakenBackWith(logLine));
  }

  /**
   * @param celsius of the freezer
   * @throws Refused if no quench is known, it is in already, or its window is past
   */
  @MayLogWork
  public void intoFreezer(long pieceId, double celsius, Told by) {
    Quench quench = last(pieceId);
    quench.intoFreezer(celsius, windows.figures(quench.alloy()), by);
  }

  /**
   * @throws Refused if it is not in the freezer
   */
  @MayLogWork
  public void outOfFreezer(long pieceId, Told by) {
    last(pieceId).outOfFreezer(by);
  }

  /**
   * Lets a piece be formed past its window.
   *
   * @param by its note is the reason
   * @throws Refused if the window is not past or the reason is missing
   */
  @MayLetFormLate
  public void letBeFormedLate(long pieceId, Told by) {
    Quench quench = last(pieceId);
    quench.letBeFormedLate(windows.figures(quench.alloy()), by);
  }

  private Quench last(long pieceId) {
    return quenches
        .findFirstByPieceIdAndTakenBackFalseOrderByQuenchedAtDesc(pieceId)
        .orElseThrow(() -> Refused.conflict("No quench of this piece is known."));
  }
}
