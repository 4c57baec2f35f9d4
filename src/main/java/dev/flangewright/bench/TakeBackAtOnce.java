package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.time.Instant;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Takes back what somebody has just logged by mistake, without asking why: their own last entry,
 * for a moment after it came in. The line it writes is the same as that of any other taking back.
 */
@Service
public class TakeBackAtOnce {

  /** The reason that the log gives. */
  public static final String REASON = "taken back at once";

  private final Pieces pieces;
  private final LogStage log;
  private final Clock clock;

  TakeBackAtOnce(Pieces pieces, LogStage log, Clock clock) {
    this.pieces = pieces;
    this.log = log;
    this.clock = clock;
  }

  /**
   * Does nothing if the entry is taken back already: a thumb may press twice.
   *
   * @param ordinal the line of the piece's log
   * @throws Refused if it is another's, something was logged after it, or the moment is over
   */
  @PreAuthorize("hasAnyAuthority('LOG_WORK', 'RELEASE_HOLD')")
  @Transactional
  public void entry(long pieceId, int ordinal) {
    Piece piece = pieces.findToChange(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    StageEntry entry =
        piece.log().stream()
            .filter(line -> line.ordinal() == ordinal)
            .findFirst()
            .orElseThrow(() -> Refused.unknown("entry", ordinal));
    if (!entry.undone()) {
      refuseUnlessFresh(piece, entry, SignedIn.name(), clock.instant());
      log.undo(pieceId, null, REASON);
    }
  }

  static void refuseUnlessFresh(Piece piece, StageEntry entry, String who, Instant now) {
    if (!entry.who().equals(who)) {
      throw Refused.conflict("Only " + entry.who() + " takes this entry back at once.");
    }
    if (piece.undoable().filter(entry::equals).isEmpty()) {
      throw Refused.conflict("Something was logged on the piece after this entry. It stays.");
    }
    if (!Moment.GRANTED.holds(entry.receivedAt(), now)) {
      throw Refused.conflict(
          "The %d seconds are over. Take the entry back below, with a reason."
              .formatted(Moment.OFFERED.seconds()));
    }
  }
}
