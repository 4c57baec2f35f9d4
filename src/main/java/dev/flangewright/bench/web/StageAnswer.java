package dev.flangewright.bench.web;

import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.StageKind;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A stage as a piece goes through it. */
record StageAnswer(
    @Schema(description = "Names the stage in addresses.", example = "edges") String code,
    String name,
    StageKind kind,
    @Schema(description = "HELD: begun, and its check is not done yet.") Stand state,
    @Schema(description = "What must be checked to pass; null when it is no hold point.")
        @Nullable String holdCheck,
    @Nullable Instant startedAt,
    @Nullable String startedBy,
    @Nullable Instant checkedAt,
    @Nullable String checkedBy,
    @Nullable Instant finishedAt,
    @Nullable String finishedBy,
    @Schema(description = "Hours spent; null when not logged.") @Nullable Double hours) {

  /** How far the stage has come. */
  enum Stand {
    NOT_BEGUN,
    BEGUN,
    HELD,
    FINISHED;

    static Stand of(PieceStage stage) {
      if (stage.isFinished()) {
        return FINISHED;
      }
      if (!stage.isStarted()) {
        return NOT_BEGUN;
      }
      return stage.waitsForCheck() ? HELD : BEGUN;
    }
  }

  static StageAnswer of(PieceStage stage) {
    return new StageAnswer(
        stage.code(),
        stage.name(),
        stage.kind(),
        Stand.of(stage),
        stage.holdCheck(),
        stage.startedAt(),
        stage.startedBy(),
        stage.checkedAt(),
        stage.checkedBy(),
        stage.finishedAt(),
        stage.finishedBy(),
        stage.hours());
  }
}
