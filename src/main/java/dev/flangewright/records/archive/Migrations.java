package dev.flangewright.records.archive;

import dev.flangewright.people.Refused;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;

/** The schema of a database by the version of its last migration. */
final class Migrations {

  private static final String APPLIED =
      "select \"version\" from \"flyway_schema_history\""
          + " where \"success\" and \"version\" is not null";

  private Migrations() {}

  /** The highest version that was applied to a database. */
  static String version(Connection connection) throws SQLException {
    MigrationVersion highest = MigrationVersion.EMPTY;
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(APPLIED)) {
      while (rows.next()) {
        MigrationVersion one = MigrationVersion.fromVersion(rows.getString(1));
        highest = one.compareTo(highest) > 0 ? one : highest;
      }
    }
    return highest.toString();
  }

  static void bringTo(DataSource source, String version) {
    flyway(source, version).migrate();
  }

  static void bringUpToDate(DataSource source) {
    flyway(source, "latest").migrate();
  }

  /**
   * @throws Refused if this program has no migration of that version: it is older than the archive
   */
  static void refuseUnknown(DataSource any, Manifest manifest) {
    List<String> known =
        Arrays.stream(flyway(any, "latest").info().all())
            .map(MigrationInfo::getVersion)
            .map(String::valueOf)
            .toList();
    if (!known.contains(manifest.schema())) {
      throw Refused.unacceptable(
          "This archive was written by a newer version of Flangewright (%s, schema %s), which this one does not know."
              .formatted(manifest.program(), manifest.schema()));
    }
  }

  private static Flyway flyway(DataSource source, String target) {
    return Flyway.configure()
        .dataSource(source)
        .locations("classpath:db/migration", "classpath:db/migration-" + engine(source).vendor())
        .target(target)
        .load();
  }

  private static Engine engine(DataSource source) {
    try (Connection connection = source.getConnection()) {
      return Engine.of(connection);
    } catch (SQLException e) {
      throw new IllegalStateException("The database does not answer: " + e.getMessage(), e);
    }
  }
}
