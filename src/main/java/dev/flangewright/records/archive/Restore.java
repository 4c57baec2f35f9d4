package dev.flangewright.records.archive;

import dev.flangewright.people.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;

/**
 * Fills an empty database from an archive. The archive is restored on a stage first, where an older
 * schema is brought up to date too; the database itself is touched when that has gone well.
 */
public final class Restore {

  private Restore() {}

  /**
   * @param beside folder for what is needed on the way; it is left as it was
   * @return what the archive says of itself
   * @throws Refused if the archive is damaged, foreign or newer than the program, or the database
   *     is not empty; it is as it was then
   */
  public static Manifest into(DataSource database, Path file, Path beside) {
    refuseFilled(database);
    try (Archive archive = Archive.open(file);
        Stage stage = Stage.in(folder(beside))) {
      Rehearse.load(archive, stage);
      Migrations.bringUpToDate(stage.database());
      Path brought = stage.file("brought-up-to-date.zip");
      WriteArchive.of(stage.database(), archive.manifest().made(), brought);
      Migrations.bringUpToDate(database);
      refuseFilled(database);
      try (Archive upToDate = Archive.open(brought)) {
        LoadArchive.into(database, upToDate);
      }
      return archive.manifest();
    }
  }

  private static Path folder(Path beside) {
    try {
      return Files.createDirectories(beside);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Nobody can have entered anything where nobody has an account. */
  private static void refuseFilled(DataSource database) {
    if (isFilled(database)) {
      throw Refused.conflict(
          "The database is not empty. An archive is restored into an empty one.");
    }
  }

  /** Whether anybody has an account in this database. */
  public static boolean isFilled(DataSource database) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      boolean accounts = Tables.of(connection).stream().anyMatch(t -> t.name().equals("account"));
      if (!accounts) {
        return false;
      }
      try (ResultSet found = statement.executeQuery("select 1 from account limit 1")) {
        return found.next();
      }
    } catch (SQLException e) {
      throw new IllegalStateException("The database does not answer: " + e.getMessage(), e);
    }
  }
}
