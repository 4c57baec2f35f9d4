package dev.flangewright.quality.web;

import org.jspecify.annotations.Nullable;

/**
 * A scrap cause as typed.
 *
 * @param seen the version of the cause that the page showed
 */
record CauseForm(String name, String usualReason, String prevention, @Nullable Long seen) {

  static final CauseForm EMPTY = new CauseForm("", "", "", null);

  CauseForm(
      @Nullable String name,
      @Nullable String usualReason,
      @Nullable String prevention,
      @Nullable Long seen) {
    this.name = name == null ? "" : name;
    this.usualReason = usualReason == null ? "" : usualReason;
    this.prevention = prevention == null ? "" : prevention;
    this.seen = seen;
  }

  /** The version seen; none that any cause has if the page did not say. */
  long version() {
    return seen == null ? -1 : seen;
  }
}
