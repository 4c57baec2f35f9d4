package dev.flangewright.records.backup;

import dev.flangewright.records.archive.Restore;
import java.time.Instant;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Backs up what is there before the schema is changed. Without a backup there is no way back. */
@Component
public class BackupBeforeUpgrade {

  private static final Logger log = LoggerFactory.getLogger(BackupBeforeUpgrade.class);

  private final BackUp backUp;
  private final BackupSettings settings;

  BackupBeforeUpgrade(BackUp backUp, BackupSettings settings) {
    this.backUp = backUp;
    this.settings = settings;
  }

  /**
   * Does nothing where nothing is to be changed, or nobody has entered anything yet.
   *
   * @throws NoBackupBeforeUpgrade if it fails and is not waived; nothing was changed then
   */
  public void of(Flyway flyway) {
    DataSource database = flyway.getConfiguration().getDataSource();
    if (flyway.info().pending().length == 0 || !Restore.isFilled(database)) {
      return;
    }
    try {
      backUp.of(database, Occasion.UPGRADE, Instant.now());
    } catch (RuntimeException failed) {
      if (settings.requiredBeforeUpgrade()) {
        throw new NoBackupBeforeUpgrade(failed);
      }
      log.warn("The backup before this upgrade failed and is waived", failed);
    }
  }
}
