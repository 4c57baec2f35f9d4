package dev.flangewright.bench;

import dev.flangewright.parts.PartProgress.Progress;
import dev.flangewright.parts.PartState;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** All pieces of one part, in the order they were begun. */
record Attempts(List<PieceLine> pieces) {

  static final Attempts NONE = new Attempts(List.of());

  static Map<Long, Attempts> byPart(List<PieceLine> ofBuild) {
    return ofBuild.stream()
        .collect(
            Collectors.groupingBy(
                PieceLine::partId,
                Collectors.collectingAndThen(Collectors.toList(), Attempts::new)));
  }

  Optional<PieceLine> last() {
    return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(pieces.size() - 1));
  }

  Optional<PieceLine> inWork() {
    return pieces.stream().filter(piece -> piece.state() == PieceState.IN_WORK).findFirst();
  }

  /** The piece that serves as the part: an accepted one before one with a concession. */
  Optional<PieceLine> passed() {
    return inState(PieceState.ACCEPTED).or(() -> inState(PieceState.CONCESSION));
  }

  /** The last piece was scrapped and no other serves. */
  boolean isLost() {
    return passed().isEmpty()
        && last().filter(piece -> piece.state() == PieceState.SCRAPPED).isPresent();
  }

  int scrapped() {
    return (int) pieces.stream().filter(piece -> piece.state() == PieceState.SCRAPPED).count();
  }

  int nextNumber() {
    return last().map(PieceLine::number).orElse(0) + 1;
  }

  Progress progress() {
    return passed()
        .map(this::passedBy)
        .or(() -> inWork().map(this::workedOn))
        .orElseGet(this::notInWork);
  }

  private Progress passedBy(PieceLine piece) {
    PartState state =
        piece.state() == PieceState.ACCEPTED ? PartState.ACCEPTED : PartState.CONCESSION;
    return progress(state, piece, state.word());
  }

  private Progress workedOn(PieceLine piece) {
    if (piece.held()) {
      return progress(
          PartState.HELD, piece, "held: " + piece.stageInWords() + " waits for its check");
    }
    String how = piece.begun() ? ", begun" : ", next";
    return progress(PartState.IN_WORK, piece, "in work: " + piece.stageInWords() + how);
  }

  private Progress notInWork() {
    return last()
        .map(lost -> "not begun again: piece " + lost.number() + " was scrapped")
        .map(words -> new Progress(PartState.NOT_BEGUN, 0, 0, scrapped(), words))
        .orElse(Progress.NOT_BEGUN);
  }

  private Progress progress(PartState state, PieceLine piece, String words) {
    return new Progress(state, piece.stagesDone(), piece.stagesTotal(), scrapped(), words);
  }

  private Optional<PieceLine> inState(PieceState state) {
    return pieces.stream().filter(piece -> piece.state() == state).findFirst();
  }
}
