package dev.flangewright.stock.web;

import dev.flangewright.stock.Batch;
import dev.flangewright.stock.BatchCondition;
import dev.flangewright.stock.BatchFacts;
import dev.flangewright.stock.StockLine;

/** A line of the ledger; texts that are not known are empty. */
record BatchRow(
    long id,
    String mark,
    String metal,
    String thickness,
    String heatNumber,
    String certificate,
    String receivedOn,
    String place,
    BatchCondition condition,
    long pieces) {

  static BatchRow of(StockLine line) {
    Batch batch = line.batch();
    BatchFacts facts = batch.facts();
    return new BatchRow(
        batch.id(),
        batch.mark(),
        facts.metal().alloy() + " " + facts.metal().temper(),
        BatchView.thickness(facts),
        facts.heatNumber(),
        facts.certificate(),
        BatchView.DAY.format(facts.receivedOn()),
        facts.place(),
        batch.condition(),
        line.pieces());
  }
}
