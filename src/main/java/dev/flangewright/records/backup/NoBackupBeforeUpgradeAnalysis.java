package dev.flangewright.records.backup;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says at start-up what to do, instead of a stack trace. */
class NoBackupBeforeUpgradeAnalysis extends AbstractFailureAnalyzer<NoBackupBeforeUpgrade> {

  @Override
  protected FailureAnalysis analyze(Throwable rootFailure, NoBackupBeforeUpgrade cause) {
    return new FailureAnalysis(
        String.valueOf(cause.getMessage()),
        "See to it that the folder of backups can be written and has space; or set"
            + " FLANGEWRIGHT_BACKUP_UPGRADE=waived if you have a backup of your own.",
        cause);
  }
}
