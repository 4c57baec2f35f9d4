package dev.flangewright.bench;

/**
 * What one rule adds to the rank of a job.
 *
 * @param reason in plain words; empty if the rule only breaks ties
 */
record Weight(double score, String reason) {}
