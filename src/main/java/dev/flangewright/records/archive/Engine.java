package dev.flangewright.records.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;

/** What differs between the engines when whole tables are read. */
enum Engine {
  /** Its level SERIALIZABLE reads all tables as they were at the first statement. */
  H2(Connection.TRANSACTION_SERIALIZABLE),
  /** Its level REPEATABLE READ is a snapshot of the whole database. */
  POSTGRESQL(Connection.TRANSACTION_REPEATABLE_READ);

  private final int snapshotLevel;

  Engine(int snapshotLevel) {
    this.snapshotLevel = snapshotLevel;
  }

  static Engine of(Connection connection) throws SQLException {
    return valueOf(connection.getMetaData().getDatabaseProductName().toUpperCase(Locale.ROOT));
  }

  int snapshotLevel() {
    return snapshotLevel;
  }

  /**
   * Rows come one by one instead of as a whole result in memory. PostgreSQL does so by itself for a
   * statement with a fetch size, outside auto-commit.
   */
  void streamRows(Connection connection, boolean one) throws SQLException {
    if (this == H2) {
      try (Statement set = connection.createStatement()) {
        set.execute("set lazy_query_execution " + (one ? 1 : 0));
      }
    }
  }

  /** The folder of migrations for this engine alone, as the program's settings name it. */
  String vendor() {
    return name().toLowerCase(Locale.ROOT);
  }
}
