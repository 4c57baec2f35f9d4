package dev.flangewright.records;

import dev.flangewright.records.backup.BackupBeforeUpgrade;
import java.util.Arrays;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationState;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.stereotype.Component;

/**
 * Migrates the database, unless a newer version of the program has written it: then nothing is
 * touched, since what this version does not know of it would be lost or misread. Before a migration
 * everything is backed up.
 */
@Component
class RefuseNewerDatabase implements FlywayMigrationStrategy {

  private final BackupBeforeUpgrade backup;

  RefuseNewerDatabase(BackupBeforeUpgrade backup) {
    this.backup = backup;
  }

  @Override
  public void migrate(Flyway flyway) {
    newer(flyway)
        .ifPresent(
            applied -> {
              throw new NewerDatabase(applied.getVersion() + " (" + applied.getDescription() + ")");
            });
    backup.of(flyway);
    flyway.migrate();
  }

  /** A migration that has been applied and that this program does not have. */
  private static Optional<MigrationInfo> newer(Flyway flyway) {
    return Arrays.stream(flyway.info().all())
        .filter(
            info ->
                info.getState() == MigrationState.FUTURE_SUCCESS
                    || info.getState() == MigrationState.FUTURE_FAILED)
        .findFirst();
  }
}
