package dev.flangewright.records.backup;

import java.nio.file.Path;

/** For tests of databases that nobody has an account in, so that nothing is backed up. */
public final class WithoutBackup {

  private WithoutBackup() {}

  public static BackupBeforeUpgrade needed() {
    BackupSettings settings =
        new BackupSettings(Path.of("target/no-backups"), "never", 1, 1, "required");
    return new BackupBeforeUpgrade(new BackUp(new BackupFolder(settings)), settings);
  }
}
