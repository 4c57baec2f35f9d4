package dev.flangewright.stock.web;

import dev.flangewright.stock.BatchCondition;
import dev.flangewright.stock.StockLine;
import org.jspecify.annotations.Nullable;

/** Which batches the ledger shows. */
enum BatchFilter {
  ALL("every batch", null),
  RECEIVED("received, certificate not checked", BatchCondition.RECEIVED),
  RELEASED("released", BatchCondition.RELEASED),
  HELD_BACK("held back", BatchCondition.HELD_BACK),
  USED_UP("used up", BatchCondition.USED_UP);

  private final String words;
  private final @Nullable BatchCondition condition;

  BatchFilter(String words, @Nullable BatchCondition condition) {
    this.words = words;
    this.condition = condition;
  }

  public String words() {
    return words;
  }

  boolean takes(StockLine line) {
    return condition == null || line.batch().condition() == condition;
  }
}
