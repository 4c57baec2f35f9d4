package dev.flangewright.records.backup;

import dev.flangewright.people.Refused;
import dev.flangewright.records.archive.Rehearse;
import dev.flangewright.records.archive.WriteArchive;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.locks.ReentrantLock;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Makes a backup and restores it beside the live data before it counts as one. */
@Component
public class BackUp {

  private static final Logger log = LoggerFactory.getLogger(BackUp.class);

  private final BackupFolder folder;
  private final ReentrantLock oneAtATime = new ReentrantLock();

  BackUp(BackupFolder folder) {
    this.folder = folder;
  }

  /**
   * Writes all records into the folder, restores them beside the live data and compares; only then
   * are older backups removed.
   *
   * @throws Refused if one is being made already, or if what was written could not be restored: the
   *     file is kept under another name then
   * @throws UncheckedIOException if the file cannot be written
   */
  public Backup of(DataSource source, Occasion occasion, Instant now) {
    if (!oneAtATime.tryLock()) {
      throw Refused.conflict("A backup is being made already.");
    }
    try {
      Path into = folder.path();
      Instant made = now.truncatedTo(ChronoUnit.SECONDS);
      Path file = into.resolve(Backup.name(made, occasion));
      Path unfinished = into.resolve(file.getFileName() + ".unfinished");
      write(source, made, unfinished);
      verify(unfinished, file, into);
      folder.removeOld(occasion);
      log.info("Backup {} is made and was restored for a trial", file);
      return Backup.of(file, Files.size(file)).orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      oneAtATime.unlock();
    }
  }

  private static void write(DataSource source, Instant made, Path unfinished) throws IOException {
    try {
      WriteArchive.of(source, made, unfinished);
    } catch (RuntimeException failed) {
      Files.deleteIfExists(unfinished);
      throw failed;
    }
  }

  private static void verify(Path unfinished, Path file, Path beside) throws IOException {
    try {
      Rehearse.of(unfinished, beside);
      Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (RuntimeException failed) {
      Path aside = file.resolveSibling(file.getFileName() + ".failed");
      Files.move(unfinished, aside, StandardCopyOption.REPLACE_EXISTING);
      log.error("BACKUP FAILED: {} could not be restored for a trial and is kept aside", aside);
      throw failed;
    }
  }
}
