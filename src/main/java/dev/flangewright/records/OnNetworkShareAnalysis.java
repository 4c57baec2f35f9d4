package dev.flangewright.records;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says at start-up what to do, instead of a stack trace. */
class OnNetworkShareAnalysis extends AbstractFailureAnalyzer<OnNetworkShare> {

  @Override
  protected FailureAnalysis analyze(Throwable rootFailure, OnNetworkShare cause) {
    return new FailureAnalysis(
        cause.getMessage(),
        "Set FLANGEWRIGHT_DATA to a folder on a disk of this machine, or use PostgreSQL.",
        cause);
  }
}
