package dev.flangewright.bench.web;

import org.jspecify.annotations.Nullable;

/**
 * What was typed to pass on a job, kept if it is refused.
 *
 * @param problem why it was refused; empty if it was not
 */
record PassOnForm(long partId, String reason, String problem) {

  static final PassOnForm NONE = new PassOnForm(0, "", "");

  static PassOnForm refused(long partId, String reason, @Nullable String problem) {
    return new PassOnForm(partId, reason, problem == null ? "" : problem);
  }

  public boolean isFor(long part) {
    return !problem.isEmpty() && partId == part;
  }
}
