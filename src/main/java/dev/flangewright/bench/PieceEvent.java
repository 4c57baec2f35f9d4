package dev.flangewright.bench;

import java.time.Instant;

/**
 * One thing that happened to a piece.
 *
 * @param what as it follows the name: {@code finished "Cutouts", 1 h 20}
 * @param note what was noted with it; empty if nothing
 * @param undone it was taken back later
 */
public record PieceEvent(Instant at, String who, String what, String note, boolean undone) {

  /** Something that stands. */
  public PieceEvent(Instant at, String who, String what, String note) {
    this(at, who, what, note, false);
  }
}
