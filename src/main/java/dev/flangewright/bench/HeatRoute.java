package dev.flangewright.bench;

import java.util.List;
import java.util.Optional;

/** The stages of a piece as far as they have to do with the quench. */
public record HeatRoute(List<PieceStage> stages) {

  public static HeatRoute of(Piece piece) {
    return new HeatRoute(piece.stages());
  }

  /** The last heat treatment that is finished. */
  public Optional<PieceStage> treated() {
    return stages.stream()
        .filter(stage -> stage.kind() == StageKind.HEAT_TREAT && stage.isFinished())
        .reduce((earlier, later) -> later);
  }

  /** Whether a stage forms the metal after it was heat treated. */
  public boolean concerns(PieceStage stage) {
    return forms(stage.kind()) && treated().filter(heat -> heat.seq() < stage.seq()).isPresent();
  }

  /** The stages that form it after the heat treatment and are not finished. */
  public List<PieceStage> formingToCome() {
    return stages.stream().filter(stage -> !stage.isFinished() && concerns(stage)).toList();
  }

  private static boolean forms(StageKind kind) {
    return kind == StageKind.FORM_SHRINK || kind == StageKind.FORM_STRETCH || kind == StageKind.SET;
  }
}
