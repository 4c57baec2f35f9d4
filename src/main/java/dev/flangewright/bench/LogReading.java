package dev.flangewright.bench;

import dev.flangewright.forming.FormingException;
import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.parts.GaugeReading;
import dev.flangewright.parts.ReadGauge;
import dev.flangewright.people.MayLogWork;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes a gauge reading on a piece down, with what is left to do by it. */
@Service
@Transactional
public class LogReading {

  private final Pieces pieces;
  private final GaugeLogs readings;
  private final ReadGauge gauge;
  private final Clock clock;

  LogReading(Pieces pieces, GaugeLogs readings, ReadGauge gauge, Clock clock) {
    this.pieces = pieces;
    this.readings = readings;
    this.gauge = gauge;
    this.clock = clock;
  }

  /**
   * @throws Refused if the piece is not in work any more, or something written cannot be taken
   * @throws FormingException if the part cannot be figured or a value is out of its range
   */
  @MayLogWork
  public GaugeLog of(long pieceId, GaugeEntry written) {
    Piece piece = pieces.findById(pieceId).orElseThrow(() -> Refused.unknown("piece", pieceId));
    if (piece.state() != PieceState.IN_WORK) {
      throw StageRefusal.pieceIsDone(piece);
    }
    GaugeReading told = gauge.of(piece.part(), written);
    Signature by = new Signature(SignedIn.name(), clock.instant(), "");
    return readings.save(new GaugeLog(piece, written, told, by));
  }
}
