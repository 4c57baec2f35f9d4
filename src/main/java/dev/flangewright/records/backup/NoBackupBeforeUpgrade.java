package dev.flangewright.records.backup;

/** The backup before an upgrade failed, so the database was left as it was. */
public class NoBackupBeforeUpgrade extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  NoBackupBeforeUpgrade(RuntimeException why) {
    super(
        "The backup before the upgrade of the database failed (%s). Nothing was changed."
            .formatted(why.getMessage()),
        why);
  }
}
