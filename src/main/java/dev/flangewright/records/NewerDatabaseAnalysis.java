package dev.flangewright.records;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says at start-up what to do, instead of a stack trace. */
class NewerDatabaseAnalysis extends AbstractFailureAnalyzer<NewerDatabase> {

  @Override
  protected FailureAnalysis analyze(Throwable rootFailure, NewerDatabase cause) {
    return new FailureAnalysis(
        cause.getMessage(),
        "Start the newer version again, or restore the backup that was made before the upgrade.",
        cause);
  }
}
