package dev.flangewright.bench;

import java.util.List;
import java.util.Optional;

/** The stages of one piece in their order: which is open, and what stands before and after it. */
record StageOrder(List<PieceStage> stages) {

  int count() {
    return stages.size();
  }

  int finished() {
    return (int) stages.stream().filter(PieceStage::isFinished).count();
  }

  /** The first stage that is not finished. */
  Optional<PieceStage> current() {
    return stages.stream().filter(stage -> !stage.isFinished()).findFirst();
  }

  Optional<PieceStage> withCode(String code) {
    return stages.stream().filter(stage -> stage.code().equals(code)).findFirst();
  }

  Optional<PieceStage> inspection() {
    return stages.stream().filter(stage -> stage.kind() == StageKind.INSPECT).findFirst();
  }

  /** The first unfinished stage before the given one. */
  Optional<PieceStage> openBefore(PieceStage stage) {
    return current().filter(open -> open.seq() < stage.seq());
  }

  List<PieceStage> from(PieceStage stage) {
    return stages.stream().filter(other -> other.seq() >= stage.seq()).toList();
  }
}
