package dev.flangewright.records.archive;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Where the chains of the journal stood in the state that was read. */
final class JournalHeads {

  private JournalHeads() {}

  /** One line a chain; none in a database from before there was a journal. */
  static List<String> of(Connection connection, List<Table> tables, Instant at)
      throws SQLException {
    List<String> heads = new ArrayList<>();
    if (tables.stream().noneMatch(table -> table.name().equals("journal_head"))) {
      return heads;
    }
    try (Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "select chain, entries, head from journal_head order by chain")) {
      while (rows.next()) {
        heads.add(
            "checkpoint %s %d %s %s"
                .formatted(rows.getString(1), rows.getLong(2), rows.getString(3), at));
      }
    }
    return heads;
  }
}
