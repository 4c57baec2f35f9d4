package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockAction;
import org.jspecify.annotations.Nullable;

/**
 * What is to happen to a block, as sent from the page.
 *
 * @param seen the version of the block that the page showed
 */
record ConditionForm(@Nullable BlockAction action, String why, @Nullable Long seen) {

  ConditionForm(@Nullable BlockAction action, @Nullable String why, @Nullable Long seen) {
    this.action = action;
    this.why = why == null ? "" : why;
    this.seen = seen;
  }
}
