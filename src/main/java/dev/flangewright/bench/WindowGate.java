package dev.flangewright.bench;

import dev.flangewright.heat.CountdownWords;
import dev.flangewright.heat.FormingWindows;
import dev.flangewright.heat.PieceWindow;
import dev.flangewright.heat.WindowState;
import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * Keeps metal from being formed in the freezer, or when its forming window after the quench is past
 * and the lead has not let it. What counts is when the stage is started, not when it is told.
 */
@Component
class WindowGate implements StageGate {

  static final String WHO =
      "the lead, with a reason, before it is started; or an inspector, who sends it back to be"
          + " solution treated and quenched anew";

  private final FormingWindows windows;

  WindowGate(FormingWindows windows) {
    this.windows = windows;
  }

  @Override
  public Optional<StageBar> bar(Piece piece, PieceStage stage, Instant at) {
    return HeatRoute.of(piece).concerns(stage)
        ? windows.ofPiece(piece.id(), at).flatMap(window -> bar(window, at))
        : Optional.empty();
  }

  private static Optional<StageBar> bar(PieceWindow window, Instant at) {
    if (window.countdown().inFreezer()) {
      return Optional.of(
          new StageBar("It is in the freezer.", "whoever takes it out of the freezer"));
    }
    boolean past = window.countdown().state() == WindowState.PAST;
    return past && !window.mayBeFormedLate(at)
        ? Optional.of(
            new StageBar(
                "Its forming window is past. "
                    + CountdownWords.onPage(window.countdown(), window.figures(), at),
                WHO))
        : Optional.empty();
  }
}
