package dev.flangewright.records.command;

import dev.flangewright.people.Refused;
import dev.flangewright.records.archive.Manifest;
import dev.flangewright.records.archive.Restore;
import dev.flangewright.records.backup.BackUp;
import dev.flangewright.records.backup.Backup;
import dev.flangewright.records.backup.BackupSettings;
import dev.flangewright.records.backup.Occasion;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import javax.sql.DataSource;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** The commands {@code backup}, {@code restore FILE} and {@code move URL}. */
public final class RecordsCommand {

  private static final String BACKUP = "backup";
  private static final String RESTORE = "restore";
  private static final String MOVE = "move";

  /** The words that begin a command. */
  public static final Set<String> NAMES = Set.of(BACKUP, RESTORE, MOVE);

  private final ConfigurableApplicationContext program;
  private final PrintStream out;

  public RecordsCommand(ConfigurableApplicationContext program, PrintStream out) {
    this.program = program;
    this.out = out;
  }

  /**
   * @param words the command and its argument
   * @throws Refused if it cannot be done, with the reason
   */
  public void run(List<String> words) {
    switch (words.get(0)) {
      case BACKUP -> backUp();
      case RESTORE -> restore(Path.of(argument(words, "restore FILE")), database());
      default -> move(argument(words, "move URL"));
    }
  }

  private Backup backUp() {
    Backup made = program.getBean(BackUp.class).of(database(), Occasion.ASKED, Instant.now());
    out.println("Backed up and restored for a trial: " + made.file());
    return made;
  }

  private void restore(Path file, DataSource into) {
    Manifest manifest = Restore.into(into, file, program.getBean(BackupSettings.class).folder());
    out.printf(
        "Restored: %d rows of %d tables, as they were at %s. All counts and digests agree.%n",
        manifest.rows(), manifest.tables().size(), manifest.made());
  }

  /** By way of a backup, which stays; what arrives is compared with it. */
  private void move(String url) {
    Environment settings = program.getEnvironment();
    DataSource to =
        new DriverManagerDataSource(
            url,
            settings.getProperty(
                "flangewright.move.username",
                settings.getProperty("spring.datasource.username", "")),
            settings.getProperty("flangewright.move.password", ""));
    restore(backUp().file(), to);
    out.println(
        "Now set SPRING_DATASOURCE_URL to the new database. The old one was left as it was.");
  }

  private DataSource database() {
    return program.getBean(DataSource.class);
  }

  private static String argument(List<String> words, String usage) {
    if (words.size() != 2) {
      throw Refused.unacceptable("Use it so: " + usage);
    }
    return words.get(1);
  }
}
