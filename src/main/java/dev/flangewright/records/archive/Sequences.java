package dev.flangewright.records.archive;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Where the sequences stand: ids that were once given are given to nothing else. */
final class Sequences {

  private static final String H2_NEXT =
      "select sequence_name, base_value from information_schema.sequences"
          + " where sequence_schema = current_schema";
  private static final String POSTGRESQL_NAMES =
      "select sequencename, increment_by from pg_sequences where schemaname = current_schema()";

  private Sequences() {}

  /** The next value of each, by its name in lower case. */
  static Map<String, Long> positions(Connection connection) throws SQLException {
    return Engine.of(connection) == Engine.H2
        ? read(connection, H2_NEXT)
        : ofPostgresql(connection);
  }

  private static Map<String, Long> ofPostgresql(Connection connection) throws SQLException {
    Map<String, Long> next = new TreeMap<>();
    for (Map.Entry<String, Long> one : read(connection, POSTGRESQL_NAMES).entrySet()) {
      String name = one.getKey();
      String position =
          "select '%s', case when is_called then last_value + %d else last_value end from \"%s\""
              .formatted(name, one.getValue(), name);
      next.putAll(read(connection, position));
    }
    return next;
  }

  /** Goes on from these positions. On H2 this commits, so it comes before rows are written. */
  static void goOnFrom(Map<String, Long> positions, Connection connection) throws SQLException {
    Map<String, Long> here = positions(connection);
    try (Statement statement = connection.createStatement()) {
      for (Map.Entry<String, Long> one : positions.entrySet()) {
        if (here.containsKey(one.getKey())) {
          statement.execute(
              "alter sequence %s restart with %d".formatted(one.getKey(), one.getValue()));
        }
      }
    }
  }

  private static Map<String, Long> read(Connection connection, String sql) throws SQLException {
    Map<String, Long> found = new TreeMap<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        found.put(rows.getString(1).toLowerCase(Locale.ROOT), rows.getLong(2));
      }
    }
    return found;
  }
}
