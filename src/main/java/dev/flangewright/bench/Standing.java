package dev.flangewright.bench;

import jakarta.persistence.Embeddable;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where a piece stands, kept on its own row so that lists need not read its stages. */
@Embeddable
class Standing {

  private int stagesDone;
  private int stagesTotal;
  private @Nullable String currentStageCode;
  private @Nullable String currentStageName;
  private boolean currentStageBegun;
  private boolean held;

  /** Counted so that every entry changes the piece, and with it its version. */
  @SuppressWarnings("UnusedVariable")
  private int logLines;

  protected Standing() {}

  /**
   * @param logLines how many lines its log has
   * @param inWork a piece that is done has no current stage
   */
  static Standing of(StageOrder stages, int logLines, boolean inWork) {
    Standing standing = new Standing();
    standing.stagesDone = stages.finished();
    standing.stagesTotal = stages.count();
    standing.logLines = logLines;
    Optional<PieceStage> current = inWork ? stages.current() : Optional.empty();
    current.ifPresent(standing::at);
    return standing;
  }

  private void at(PieceStage stage) {
    currentStageCode = stage.code();
    currentStageName = stage.name();
    currentStageBegun = stage.isStarted();
    held = stage.isHeld();
  }

  int stagesDone() {
    return stagesDone;
  }

  int stagesTotal() {
    return stagesTotal;
  }

  @Nullable String currentStageCode() {
    return currentStageCode;
  }

  @Nullable String currentStageName() {
    return currentStageName;
  }

  boolean currentStageBegun() {
    return currentStageBegun;
  }

  boolean held() {
    return held;
  }
}
