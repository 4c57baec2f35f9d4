package dev.flangewright.records.archive;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;

/** Reads a database as it was at one moment, while people go on working in it. */
final class Snapshot {

  private Snapshot() {}

  /** What is read; it sees one state throughout. */
  interface Reading<T> {
    T from(Connection connection) throws SQLException;
  }

  static <T> T of(DataSource source, Reading<T> reading) throws SQLException {
    try (Connection connection = source.getConnection()) {
      int level = connection.getTransactionIsolation();
      Engine engine = Engine.of(connection);
      engine.streamRows(connection, true);
      connection.setAutoCommit(false);
      connection.setTransactionIsolation(engine.snapshotLevel());
      try {
        return reading.from(connection);
      } finally {
        connection.rollback();
        connection.setTransactionIsolation(level);
        connection.setAutoCommit(true);
        engine.streamRows(connection, false);
      }
    }
  }
}
