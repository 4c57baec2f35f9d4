package dev.flangewright.records.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** The folder of backups. Only its owner may read it: an archive holds everything. */
@Component
public class BackupFolder {

  private final BackupSettings settings;

  BackupFolder(BackupSettings settings) {
    this.settings = settings;
  }

  /** The folder, made if it was not there. */
  Path path() {
    try {
      Path folder = settings.folder();
      if (Files.notExists(folder)) {
        Files.createDirectories(folder);
        closeToOthers(folder);
      }
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void closeToOthers(Path folder) {
    folder.toFile().setReadable(false, false);
    folder.toFile().setExecutable(false, false);
    folder.toFile().setReadable(true, true);
    folder.toFile().setExecutable(true, true);
  }

  /** The newest first, those that could not be verified among them. */
  public List<Backup> all() {
    if (Files.notExists(settings.folder())) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(settings.folder())) {
      return files
          .filter(Files::isRegularFile)
          .flatMap(file -> Backup.of(file, file.toFile().length()).stream())
          .sorted(Comparator.comparing(Backup::made).reversed())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The backup of that name; no other file can be named. */
  public Optional<Backup> named(String name) {
    return all().stream().filter(backup -> backup.name().equals(name)).findFirst();
  }

  /** Removes what is older than the newest that are kept; called when a newer one is verified. */
  void removeOld(Occasion occasion) {
    for (boolean verified : new boolean[] {true, false}) {
      all().stream()
          .filter(backup -> backup.occasion() == occasion && backup.verified() == verified)
          .skip(settings.keep(occasion))
          .forEach(old -> old.file().toFile().delete());
    }
  }
}
