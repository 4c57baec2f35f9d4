package dev.flangewright.records.archive;

import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** Reads a table row by row, however large it is. */
final class ReadTable {

  private static final int ROWS_AT_ONCE = 500;

  /** Rows with photos are few at once: each may have millions of bytes. */
  private static final int PHOTOS_AT_ONCE = 8;

  private ReadTable() {}

  /** Takes one row, as a line of JSON without its end. */
  interface Taking {
    void line(String line) throws IOException;
  }

  static Contents contents(Table table, Connection from) throws SQLException {
    try {
      return into(ignored -> {}, table, from);
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  static Contents into(Taking taking, Table table, Connection from)
      throws SQLException, IOException {
    Contents contents = new Contents();
    try (Statement statement = from.createStatement()) {
      statement.setFetchSize(table.holdsBytes() ? PHOTOS_AT_ONCE : ROWS_AT_ONCE);
      ResultSet rows = statement.executeQuery(table.selectAll());
      while (rows.next()) {
        String line = RowLine.of(rows, table.columns());
        contents.add(line);
        taking.line(line);
      }
    }
    return contents;
  }
}
