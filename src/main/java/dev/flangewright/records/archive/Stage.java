package dev.flangewright.records.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.util.FileSystemUtils;

/** A database of its own for the time of a rehearsal, in a file beside the archive. */
final class Stage implements AutoCloseable {

  private final Path folder;
  private final DriverManagerDataSource database;

  private Stage(Path folder) {
    this.folder = folder;
    this.database =
        new DriverManagerDataSource(
            "jdbc:h2:file:" + folder.toAbsolutePath() + "/stage;DB_CLOSE_DELAY=-1", "sa", "");
  }

  static Stage in(Path folder) {
    try {
      return new Stage(Files.createTempDirectory(folder, ".stage"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  DriverManagerDataSource database() {
    return database;
  }

  Path file(String name) {
    return folder.resolve(name);
  }

  @Override
  public void close() {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("shutdown immediately");
    } catch (SQLException closedNow) {
      // the engine says so of the connection that closed it
    }
    try {
      FileSystemUtils.deleteRecursively(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
