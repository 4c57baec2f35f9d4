package dev.flangewright.bench.web;

import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceState;
import dev.flangewright.bench.Route;
import dev.flangewright.stock.Batch;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A piece with its stages and its log. */
record PieceAnswer(
    long id,
    @Schema(description = "Send it back with an entry, to be told if somebody else was quicker.")
        long pieceVersion,
    long buildId,
    long partId,
    String partNumber,
    @Schema(description = "Counted from 1 for each part.") int number,
    PieceState state,
    @Schema(description = "Stands at a hold point whose check is not done.") boolean held,
    @Schema(description = "Code of the first stage not finished; null when the piece is done.")
        @Nullable String currentStage,
    Instant createdAt,
    String createdBy,
    @Schema(description = "The version of the route it began on; null before there were versions.")
        @Nullable Long routeId,
    @Schema(description = "Name and version of that route.") @Nullable String route,
    @Schema(description = "The piece of the other hand begun with it; null when begun alone.")
        @Nullable Long twinPieceId,
    @Schema(description = "The batch of sheet it was cut from; null where none is recorded.")
        @Nullable Long batchId,
    @Schema(description = "Mark of that batch.", example = "B-12") @Nullable String batch,
    @Schema(description = "In the order of the route.") List<StageAnswer> stages,
    @Schema(description = "Oldest first.") List<EntryAnswer> log,
    @Schema(description = "How long it stays soft after its last quench; null without one.")
        @Nullable WindowAnswer formingWindow) {

  static PieceAnswer of(Piece piece, @Nullable WindowAnswer window) {
    Route route = piece.route();
    Piece twin = piece.twin();
    Batch cut = piece.batch();
    return new PieceAnswer(
        piece.id(),
        piece.version(),
        piece.buildId(),
        piece.part().id(),
        piece.part().partNumber(),
        piece.number(),
        piece.state(),
        piece.held(),
        piece.currentStageCode(),
        piece.createdAt(),
        piece.createdBy(),
        route == null ? null : route.id(),
        route == null ? null : route.label(),
        twin == null ? null : twin.id(),
        cut == null ? null : cut.id(),
        cut == null ? null : cut.mark(),
        piece.stages().stream().map(StageAnswer::of).toList(),
        piece.log().stream().map(EntryAnswer::of).toList(),
        window);
  }
}
