package dev.flangewright.records.backup;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** What the one who runs the program has chosen; the settings stand in docs/operating.md. */
@Component
public class BackupSettings {

  private static final String NEVER = "never";

  private final Path folder;
  private final String at;
  private final int keep;
  private final int keepBeforeUpgrades;
  private final boolean requiredBeforeUpgrade;

  BackupSettings(
      @Value("${flangewright.backup.folder}") Path folder,
      @Value("${flangewright.backup.at}") String at,
      @Value("${flangewright.backup.keep}") int keep,
      @Value("${flangewright.backup.keepupgrades}") int keepBeforeUpgrades,
      @Value("${flangewright.backup.upgrade}") String upgrade) {
    this.folder = folder;
    this.at = at;
    this.keep = Math.max(1, keep);
    this.keepBeforeUpgrades = Math.max(1, keepBeforeUpgrades);
    this.requiredBeforeUpgrade = !upgrade.equals("waived");
  }

  public Path folder() {
    return folder;
  }

  /** When the nightly backup is made, local time; empty if none is. */
  Optional<LocalTime> at() {
    return at.equals(NEVER) ? Optional.empty() : Optional.of(LocalTime.parse(at));
  }

  int keep(Occasion occasion) {
    return occasion == Occasion.UPGRADE ? keepBeforeUpgrades : keep;
  }

  boolean requiredBeforeUpgrade() {
    return requiredBeforeUpgrade;
  }
}
