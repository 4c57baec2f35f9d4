package dev.flangewright.bench;

import dev.flangewright.heat.LogHeat;
import dev.flangewright.heat.QuenchedPiece;
import dev.flangewright.heat.Told;
import dev.flangewright.people.Refused;
import java.time.Instant;
import org.springframework.stereotype.Component;

/** Takes the quench down when a heat treatment is finished, and back when that is taken back. */
@Component
class QuenchOfStage {

  private final LogHeat heat;

  QuenchOfStage(LogHeat heat) {
    this.heat = heat;
  }

  /**
   * @throws Refused if a quench is told of another stage, or at a time that cannot be
   */
  void finished(Piece piece, PieceStage stage, Quenching quenching, Signature by) {
    if (stage.kind() != StageKind.HEAT_TREAT) {
      refuseIfSaid(stage, quenching);
    } else if (!quenching.none()) {
      Instant at = quenching.at();
      heat.quenched(of(piece), at == null ? by.at() : at, told(by), piece.log().size());
    }
  }

  private static void refuseIfSaid(PieceStage stage, Quenching quenching) {
    if (quenching.isSaid()) {
      throw Refused.unacceptable(
          "\"%s\" is no heat treatment; no quench is told with it.".formatted(stage.name()));
    }
  }

  void undone(Piece piece, StageEntry taken) {
    boolean treated = piece.stage(taken.stageCode()).kind() == StageKind.HEAT_TREAT;
    if (treated && taken.action() == EntryAction.FINISH) {
      heat.takeBack(piece.id(), taken.ordinal());
    }
  }

  static QuenchedPiece of(Piece piece) {
    return new QuenchedPiece(piece.id(), piece.buildId(), piece.part().drawn().alloy());
  }

  static Told told(Signature by) {
    return new Told(by.who(), by.at(), by.note(), by.receivedAt());
  }
}
