package dev.flangewright.stock.web;

import dev.flangewright.stock.BatchAction;
import org.jspecify.annotations.Nullable;

/**
 * What is to happen to a batch, as sent from the page.
 *
 * @param seen the version of the batch that the page showed
 */
record BatchForm(@Nullable BatchAction action, String words, @Nullable Long seen) {

  BatchForm(@Nullable BatchAction action, @Nullable String words, @Nullable Long seen) {
    this.action = action;
    this.words = words == null ? "" : words;
    this.seen = seen;
  }
}
