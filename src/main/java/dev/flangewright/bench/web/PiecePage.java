package dev.flangewright.bench.web;

import dev.flangewright.bench.Hours;
import dev.flangewright.bench.InWords;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.PieceState;
import dev.flangewright.bench.Route;
import dev.flangewright.bench.StageEntry;
import dev.flangewright.people.SignedIn;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * All that the page of a piece says, apart from its time line.
 *
 * @param alsoOpen the other stages that may be worked on now
 * @param routeId of the version that it began on; 0 if it began before routes had versions
 */
record PiecePage(
    long id,
    long version,
    long partId,
    String partNumber,
    int number,
    String mark,
    String heading,
    String progress,
    ToDo now,
    StageToDo stage,
    List<OpenStage> alsoOpen,
    List<StageLine> stages,
    long routeId,
    String route,
    String undoable,
    boolean mayUndo) {

  /** A stage that may be worked on now. */
  record OpenStage(String code, String name) {}

  /**
   * @param shown the stage that the page offers; empty once the piece is done
   */
  static PiecePage of(Piece piece, Optional<PieceStage> shown, StageToDo stage, Instant now) {
    Optional<StageEntry> undoable = piece.undoable();
    Route route = piece.route();
    return new PiecePage(
        piece.id(),
        piece.version(),
        piece.part().id(),
        piece.part().partNumber(),
        piece.number(),
        piece.held() ? "HELD" : piece.state().name(),
        PieceHeading.of(piece, shown),
        progress(piece),
        ToDo.on(piece, shown),
        stage,
        piece.open().stream()
            .filter(open -> shown.filter(open::equals).isEmpty())
            .map(open -> new OpenStage(open.code(), InWords.within(open.name())))
            .toList(),
        piece.stages().stream()
            .map(each -> StageLine.of(each, shown.filter(each::equals).isPresent(), now))
            .toList(),
        route == null ? 0 : route.id(),
        route == null ? "" : route.label(),
        undoable.map(PiecePage::undoable).orElse(""),
        undoable.filter(entry -> entry.canBeTakenBackBy(SignedIn::may)).isPresent());
  }

  /** The stage asked for, if it is open; otherwise the one to be looked at now. */
  static Optional<PieceStage> shown(Piece piece, String wanted) {
    if (piece.state() != PieceState.IN_WORK) {
      return Optional.empty();
    }
    return piece.open().stream()
        .filter(open -> open.code().equals(wanted))
        .findFirst()
        .or(piece::current);
  }

  private static String undoable(StageEntry entry) {
    return "“%s”, %s by %s".formatted(entry.stageName(), entry.action().word(), entry.who());
  }

  private static String progress(Piece piece) {
    return "%d of %d stages done, %s logged"
        .formatted(piece.stagesDone(), piece.stagesTotal(), Hours.inWords(piece.hoursSpent()));
  }
}
