package dev.flangewright.quality.web;

import dev.flangewright.bench.PieceState;
import dev.flangewright.quality.Inspection;
import dev.flangewright.quality.Outcome;
import dev.flangewright.quality.ScrapCause;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** An inspection, and what became of the piece by it. */
record InspectionAnswer(
    long id,
    long pieceId,
    PieceState pieceState,
    @Schema(description = "The piece's version after the inspection.") long pieceVersion,
    Outcome outcome,
    @Schema(description = "Code of the scrap cause; null unless scrapped.") @Nullable String cause,
    @Nullable String stage,
    String note,
    String who,
    Instant doneAt) {

  static InspectionAnswer of(Inspection inspection) {
    ScrapCause cause = inspection.cause();
    return new InspectionAnswer(
        inspection.id(),
        inspection.piece().id(),
        inspection.piece().state(),
        inspection.piece().version(),
        inspection.outcome(),
        cause == null ? null : cause.code(),
        inspection.stageCode(),
        inspection.note(),
        inspection.who(),
        inspection.doneAt());
  }
}
