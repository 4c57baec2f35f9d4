package dev.flangewright.stock.web;

import dev.flangewright.parts.Written;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchChange;
import dev.flangewright.stock.BatchCondition;
import dev.flangewright.stock.BatchFacts;
import dev.flangewright.stock.PiecesCut.CutPiece;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A batch with its log and every piece cut from it. */
record BatchAnswer(
    long id,
    long buildId,
    @Schema(description = "Send it back with a change; a later one is refused then.")
        long batchVersion,
    @Schema(description = "No other batch of the build has it.", example = "B-12") String mark,
    BatchCondition condition,
    String alloy,
    String temper,
    @Schema(description = "As written: in mm, by gauge or in inches.", example = "20 SWG")
        String thickness,
    double thicknessMm,
    @Schema(description = "Heat or cast number; empty where not known.") String heatNumber,
    @Schema(description = "Number of the certificate; empty where not known.") String certificate,
    String supplier,
    @Schema(description = "Null where not known.") @Nullable Double sheetWidthMm,
    @Schema(description = "Null where not known.") @Nullable Double sheetLengthMm,
    @Schema(description = "How many sheets came; null where not known.") @Nullable Integer sheets,
    LocalDate receivedOn,
    @Schema(description = "Where it lies.") String place,
    String note,
    @Schema(description = "Every piece cut from it, scrapped ones too.") List<PieceCut> pieces,
    @Schema(description = "Oldest first.") List<ChangeAnswer> log) {

  /** A piece that was cut of the batch. */
  record PieceCut(
      long id,
      long partId,
      String partNumber,
      int number,
      @Schema(description = "In words.") String state) {

    static PieceCut of(CutPiece piece) {
      return new PieceCut(
          piece.id(), piece.partId(), piece.partNumber(), piece.number(), piece.state());
    }
  }

  /** A line of the log. */
  record ChangeAnswer(
      @Schema(description = "The condition from then on.") BatchCondition condition,
      String who,
      Instant doneAt,
      @Schema(description = "Who checked, why, or what was changed.") String words) {

    static ChangeAnswer of(BatchChange change) {
      return new ChangeAnswer(change.condition(), change.who(), change.doneAt(), change.words());
    }
  }

  static BatchAnswer of(Batch batch, List<CutPiece> pieces) {
    BatchFacts facts = batch.facts();
    return new BatchAnswer(
        batch.id(),
        batch.build().id(),
        batch.version(),
        batch.mark(),
        batch.condition(),
        facts.metal().alloy(),
        facts.metal().temper(),
        facts.thickness(),
        facts.metal().thicknessMm(),
        facts.heatNumber(),
        facts.certificate(),
        facts.supplier(),
        mm(facts.sheetWidthMm()),
        mm(facts.sheetLengthMm()),
        facts.sheets(),
        facts.receivedOn(),
        facts.place(),
        facts.note(),
        pieces.stream().map(PieceCut::of).toList(),
        batch.changes().stream().map(ChangeAnswer::of).toList());
  }

  private static @Nullable Double mm(@Nullable Written number) {
    return number == null ? null : number.value();
  }
}
