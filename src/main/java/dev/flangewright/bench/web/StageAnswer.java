package dev.flangewright.bench.web;

import dev.flangewright.bench.Answer;
import dev.flangewright.bench.CheckCard;
import dev.flangewright.bench.CheckKind;
import dev.flangewright.bench.PieceCheck;
import dev.flangewright.bench.PieceStage;
import dev.flangewright.bench.StageKind;
import dev.flangewright.people.Clearance;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A stage as a piece goes through it. */
record StageAnswer(
    @Schema(description = "Names the stage in addresses.", example = "edges") String code,
    String name,
    StageKind kind,
    @Schema(description = "HELD: begun, and somebody who releases holds has to look.") Stand state,
    @Schema(description = "What must be checked to pass; null when it is no hold point.")
        @Nullable String holdCheck,
    @Schema(description = "What it takes to start and finish it; null when anybody may.")
        @Nullable Clearance clearance,
    @Nullable Integer expectedMinutes,
    @Schema(description = "May be done at the same time as neighbours that may too.")
        boolean alongside,
    List<OfCheck> checks,
    @Nullable Instant startedAt,
    @Nullable String startedBy,
    @Nullable Instant checkedAt,
    @Nullable String checkedBy,
    @Nullable Instant finishedAt,
    @Nullable String finishedBy,
    @Schema(description = "Hours spent; null when not logged.") @Nullable Double hours) {

  /** A check of the stage, with its answer if there is one. */
  @Schema(name = "CheckOfStage")
  record OfCheck(
      @Schema(description = "Names the check in addresses.") String code,
      String question,
      CheckKind kind,
      String unit,
      @Nullable Double nominal,
      @Schema(description = "Lowest number that is right; null when there is none.")
          @Nullable Double from,
      @Schema(description = "Highest number that is right; null when there is none.")
          @Nullable Double to,
      @Nullable Boolean yes,
      @Nullable Double number,
      @Schema(description = "The id of the photo that answers it.") @Nullable Long photo,
      @Schema(description = "Answered, and not as wanted.") boolean failed,
      @Nullable Instant answeredAt,
      @Nullable String answeredBy,
      @Schema(description = "When somebody let it pass though it failed.")
          @Nullable Instant passedAt,
      @Nullable String passedBy) {

    static OfCheck of(PieceCheck check) {
      CheckCard card = check.card();
      Answer answer = check.answer();
      return new OfCheck(
          check.code(),
          card.question(),
          card.kind(),
          card.unit(),
          card.nominal(),
          card.least(),
          card.most(),
          answer == null ? null : answer.yes(),
          answer == null ? null : answer.number(),
          answer == null ? null : answer.photo(),
          check.isFailed(),
          check.answeredAt(),
          check.answeredBy(),
          check.passedAt(),
          check.passedBy());
    }
  }

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
      return stage.isHeld() ? HELD : BEGUN;
    }
  }

  static StageAnswer of(PieceStage stage) {
    return new StageAnswer(
        stage.code(),
        stage.name(),
        stage.kind(),
        Stand.of(stage),
        stage.holdCheck(),
        stage.clearance(),
        stage.card().expectedMinutes(),
        stage.card().alongside(),
        stage.checks().stream().map(OfCheck::of).toList(),
        stage.startedAt(),
        stage.startedBy(),
        stage.checkedAt(),
        stage.checkedBy(),
        stage.finishedAt(),
        stage.finishedBy(),
        stage.hours());
  }
}
