package dev.flangewright.bench.web;

import dev.flangewright.bench.HeatRoute;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.PieceState;
import dev.flangewright.bench.StageKind;
import dev.flangewright.heat.PieceWindow;
import dev.flangewright.people.LogTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the page of a piece says of the quench.
 *
 * @param treating the code of the open heat treatment, whose finish asks for the quench; empty if
 *     there is none
 * @param treated the code of the last finished heat treatment; empty before one, and when the piece
 *     is done
 * @param matters a stage that forms it is still to come or begun
 * @param quenched when and by whom; empty if no quench is known
 * @param window null if no quench is known
 */
record WindowView(
    String treating,
    String treated,
    boolean matters,
    String quenched,
    List<String> begun,
    @Nullable CountdownView window) {

  static WindowView of(Piece piece, Optional<PieceWindow> window, Instant now) {
    HeatRoute route = HeatRoute.of(piece);
    boolean inWork = piece.state() == PieceState.IN_WORK;
    List<PieceStage> toCome = inWork ? route.formingToCome() : List.of();
    return new WindowView(
        piece.open().stream()
            .filter(stage -> stage.kind() == StageKind.HEAT_TREAT)
            .map(PieceStage::code)
            .findFirst()
            .orElse(""),
        inWork ? route.treated().map(PieceStage::code).orElse("") : "",
        !toCome.isEmpty(),
        window.map(known -> quenched(known, now)).orElse(""),
        toCome.stream().filter(PieceStage::isStarted).map(PieceStage::name).toList(),
        window.map(known -> CountdownView.of(known, now)).orElse(null));
  }

  private static String quenched(PieceWindow window, Instant now) {
    return "Quenched %s; told by %s."
        .formatted(LogTime.of(window.quenchedAt(), now), window.told().who());
  }

  /** Whether the form that finishes this stage asks for the quench. */
  public boolean asksAt(String stage) {
    return !stage.isEmpty() && stage.equals(treating);
  }

  /** Something is to be said of it. */
  public boolean shown() {
    return !treated.isEmpty() && (matters || isFrozen());
  }

  public boolean isFrozen() {
    return window != null && window.inFreezer();
  }

  /** One line at the head of the page, where a stage that forms it comes or is begun. */
  public boolean heads() {
    return shown() && window != null;
  }
}
