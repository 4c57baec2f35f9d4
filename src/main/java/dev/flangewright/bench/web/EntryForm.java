package dev.flangewright.bench.web;

import dev.flangewright.bench.WorkDone;
import org.jspecify.annotations.Nullable;

/**
 * What was typed on the piece page: kept as typed, so that it is still there if it is refused.
 *
 * @param seen the version of the piece that the page showed
 */
record EntryForm(
    String hours, String note, String blockDamage, String reason, @Nullable Long seen) {

  static final EntryForm EMPTY = new EntryForm("", "", "", "", null);

  EntryForm(
      @Nullable String hours,
      @Nullable String note,
      @Nullable String blockDamage,
      @Nullable String reason,
      @Nullable Long seen) {
    this.hours = hours == null ? "" : hours;
    this.note = note == null ? "" : note;
    this.blockDamage = blockDamage == null ? "" : blockDamage;
    this.reason = reason == null ? "" : reason;
    this.seen = seen;
  }

  /** What is told when a stage is finished. */
  WorkDone done(@Nullable Double spent) {
    return WorkDone.in(spent, note).damaged(blockDamage);
  }
}
