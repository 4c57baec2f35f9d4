package dev.flangewright.bench;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** All that a stage waits for before it may start. */
@Component
public class StageGates {

  private final List<StageGate> gates;

  StageGates(List<StageGate> gates) {
    this.gates = gates;
  }

  /** Everything that stands in the way of starting the stage; nothing once it is started. */
  public List<StageBar> bars(Piece piece, PieceStage stage, Instant at) {
    return stage.isStarted()
        ? List.of()
        : gates.stream().map(gate -> gate.bar(piece, stage, at)).flatMap(Optional::stream).toList();
  }

  /**
   * @throws StageRefusal with the first thing that stands in the way
   */
  void refuseIfBarred(Piece piece, PieceStage stage, Instant at) {
    bars(piece, stage, at).stream()
        .findFirst()
        .ifPresent(
            bar -> {
              throw StageRefusal.barred(stage, bar);
            });
  }
}
