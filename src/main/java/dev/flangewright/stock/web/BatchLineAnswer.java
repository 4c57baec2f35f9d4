package dev.flangewright.stock.web;

import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchCondition;
import dev.flangewright.stock.BatchFacts;
import dev.flangewright.stock.StockLine;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.LocalDate;

/** A line of the list of batches. */
record BatchLineAnswer(
    long id,
    @Schema(example = "B-12") String mark,
    BatchCondition condition,
    String alloy,
    String temper,
    double thicknessMm,
    @Schema(description = "Heat or cast number; empty where not known.") String heatNumber,
    @Schema(description = "Number of the certificate; empty where not known.") String certificate,
    LocalDate receivedOn,
    String place,
    @Schema(description = "How many pieces were cut from it.") long pieces) {

  static BatchLineAnswer of(StockLine line) {
    Batch batch = line.batch();
    BatchFacts facts = batch.facts();
    return new BatchLineAnswer(
        batch.id(),
        batch.mark(),
        batch.condition(),
        facts.metal().alloy(),
        facts.metal().temper(),
        facts.metal().thicknessMm(),
        facts.heatNumber(),
        facts.certificate(),
        facts.receivedOn(),
        facts.place(),
        line.pieces());
  }
}
