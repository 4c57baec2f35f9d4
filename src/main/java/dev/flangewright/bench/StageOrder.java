package dev.flangewright.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The stages of one piece in their order: which are open, and what stands before and after them.
 * Neighbours that may go alongside each other are open together; every other stage opens when all
 * before it are finished.
 */
record StageOrder(List<PieceStage> stages) {

  int count() {
    return stages.size();
  }

  int finished() {
    return (int) stages.stream().filter(PieceStage::isFinished).count();
  }

  /**
   * The stage to be looked at now: of the open ones a held one, else a begun one, else the first.
   */
  Optional<PieceStage> current() {
    return open().stream()
        .min(
            Comparator.comparing((PieceStage stage) -> !stage.isHeld())
                .thenComparing(stage -> !stage.isStarted())
                .thenComparing(PieceStage::seq));
  }

  /** Every stage that is not finished and may be worked on. */
  List<PieceStage> open() {
    return stages.stream()
        .filter(stage -> !stage.isFinished() && openBefore(stage).isEmpty())
        .toList();
  }

  Optional<PieceStage> withCode(String code) {
    return stages.stream().filter(stage -> stage.code().equals(code)).findFirst();
  }

  Optional<PieceStage> inspection() {
    return stages.stream().filter(stage -> stage.kind() == StageKind.INSPECT).findFirst();
  }

  /** The first unfinished stage that has to be finished before the given one. */
  Optional<PieceStage> openBefore(PieceStage stage) {
    return stages.subList(0, beginOfGroup(stage)).stream()
        .filter(earlier -> !earlier.isFinished())
        .findFirst();
  }

  /** Where the run of stages begins that may be done alongside this one. */
  private int beginOfGroup(PieceStage stage) {
    int place = stages.indexOf(stage);
    while (place > 0
        && stages.get(place).goesAlongside()
        && stages.get(place - 1).goesAlongside()) {
      place--;
    }
    return place;
  }

  List<PieceStage> from(PieceStage stage) {
    return stages.stream().filter(other -> other.seq() >= stage.seq()).toList();
  }
}
