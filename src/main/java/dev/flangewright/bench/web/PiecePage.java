package dev.flangewright.bench.web;

import dev.flangewright.bench.Hours;
import dev.flangewright.bench.InWords;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.PieceState;
import dev.flangewright.bench.StageEntry;
import dev.flangewright.people.SignedIn;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** All that the page of a piece says. */
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
    String stageCode,
    String stageInWords,
    String holdCheck,
    String caution,
    List<String> figures,
    List<StageLine> stages,
    List<LogLine> log,
    String undoable,
    boolean mayUndo) {

  static PiecePage of(Piece piece, Instant now, SplitGround ground) {
    Optional<PieceStage> current = current(piece);
    Optional<StageEntry> undoable = piece.undoable();
    return new PiecePage(
        piece.id(),
        piece.version(),
        piece.part().id(),
        piece.part().partNumber(),
        piece.number(),
        piece.held() ? "HELD" : piece.state().name(),
        PieceHeading.of(piece, current),
        progress(piece),
        ToDo.on(piece, current),
        current.map(PieceStage::code).orElse(""),
        current.map(PieceStage::name).map(InWords::within).orElse(""),
        current.map(PieceStage::holdCheck).orElse(""),
        current.flatMap(stage -> StageAdvice.caution(stage.kind())).orElse(""),
        current
            .map(stage -> StageAdvice.figures(stage.kind(), piece.part().flanges(), ground))
            .orElse(List.of()),
        piece.stages().stream()
            .map(stage -> StageLine.of(stage, current.filter(stage::equals).isPresent(), now))
            .toList(),
        log(piece, now),
        undoable
            .map(
                entry ->
                    "“%s”, %s by %s"
                        .formatted(entry.stageName(), entry.action().word(), entry.who()))
            .orElse(""),
        undoable.filter(entry -> SignedIn.may(entry.takenBackWith())).isPresent());
  }

  private static Optional<PieceStage> current(Piece piece) {
    return piece.state() == PieceState.IN_WORK ? piece.current() : Optional.empty();
  }

  private static String progress(Piece piece) {
    return "%d of %d stages done, %s logged"
        .formatted(piece.stagesDone(), piece.stagesTotal(), Hours.inWords(piece.hoursSpent()));
  }

  private static List<LogLine> log(Piece piece, Instant now) {
    List<LogLine> newestFirst = new ArrayList<>();
    piece.log().forEach(entry -> newestFirst.add(LogLine.of(entry, now)));
    Collections.reverse(newestFirst);
    return newestFirst;
  }
}
