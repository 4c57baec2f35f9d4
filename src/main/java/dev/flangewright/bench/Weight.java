package dev.flangewright.bench;

/**
 * What one rule says of a job.
 *
 * @param score the higher comes first; compared only with the same rule's scores of other jobs
 * @param reason in plain words; empty if the rule has nothing to tell
 */
record Weight(double score, String reason) {

  /** The rule does not touch the job. */
  static final Weight NOTHING = new Weight(0, "");

  /** After every job of which the rule has something to say. */
  static final Weight LAST = new Weight(Double.NEGATIVE_INFINITY, "");
}
