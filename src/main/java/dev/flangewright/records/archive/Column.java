package dev.flangewright.records.archive;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/**
 * A column of a table.
 *
 * @param name in lower case, as archives name it
 * @param sqlName quoted, as the engine at hand spells it
 * @param later refers to a row that may come later: filled when all rows are there
 */
record Column(String name, String sqlName, ColumnType type, int jdbcType, boolean later) {

  void bind(PreparedStatement to, int at, @Nullable Object written) throws SQLException {
    if (written == null) {
      to.setNull(at, jdbcType);
    } else {
      type.bind(to, at, written);
    }
  }

  Column filledLater() {
    return new Column(name, sqlName, type, jdbcType, true);
  }
}
