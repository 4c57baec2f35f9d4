package dev.flangewright.records.archive;

import dev.flangewright.people.Refused;
import java.io.BufferedReader;
import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/**
 * Fills a database of the archive's own schema: all rows in one transaction, which is kept only if
 * the tables then hold what the archive says they should.
 */
final class LoadArchive {

  private static final int LONGEST_BATCH = 4 * 1024 * 1024;
  private static final int MOST_ROWS = 500;

  private final Archive archive;
  private final Connection to;
  private final Map<String, Manifest.TableFile> files;

  private LoadArchive(Archive archive, Connection to) {
    this.archive = archive;
    this.to = to;
    this.files =
        archive.manifest().tables().stream()
            .collect(Collectors.toMap(Manifest.TableFile::table, Function.identity()));
  }

  /**
   * Replaces every row that is there, such as those that migrations put into an empty database.
   *
   * @throws Refused if the archive does not fit; nothing is changed then
   */
  static void into(DataSource target, Archive archive) {
    try (Connection connection = target.getConnection()) {
      Engine engine = Engine.of(connection);
      List<Table> tables = Tables.of(connection);
      LoadArchive load = new LoadArchive(archive, connection);
      load.refuseOtherTables(tables);
      Sequences.goOnFrom(archive.manifest().sequences(), connection);
      engine.streamRows(connection, true);
      connection.setAutoCommit(false);
      try {
        load.replace(tables);
        load.refuseOtherContents(tables);
        connection.commit();
      } finally {
        connection.rollback();
        connection.setAutoCommit(true);
        engine.streamRows(connection, false);
      }
    } catch (SQLException | IOException e) {
      throw Refused.unacceptable("This archive cannot be loaded: " + e.getMessage());
    }
  }

  private void refuseOtherTables(List<Table> tables) {
    List<String> here = tables.stream().map(Table::name).sorted().toList();
    if (!here.equals(files.keySet().stream().sorted().toList())) {
      throw Refused.unacceptable("The tables of this archive are not those of its schema.");
    }
  }

  private void replace(List<Table> tables) throws SQLException, IOException {
    List<Table> backwards = new ArrayList<>(tables);
    Collections.reverse(backwards);
    for (Table table : backwards) {
      try (PreparedStatement statement = to.prepareStatement(table.deleteAll())) {
        statement.executeUpdate();
      }
    }
    for (Table table : tables) {
      insert(table);
    }
    for (Table table : tables) {
      if (!table.filledLater().isEmpty()) {
        fillLater(table);
      }
    }
  }

  private void insert(Table table) throws SQLException, IOException {
    eachRow(
        table,
        table.insert(),
        (row, statement) -> {
          for (int at = 0; at < row.length; at++) {
            Column column = table.columns().get(at);
            column.bind(statement, at + 1, column.later() ? null : row[at]);
          }
          return true;
        });
  }

  /** References to rows of the same table, or in a circle of tables, once all rows are there. */
  private void fillLater(Table table) throws SQLException, IOException {
    List<Column> later = table.filledLater();
    List<Column> bound = new ArrayList<>(later);
    bound.addAll(table.key());
    eachRow(
        table,
        table.update(),
        (row, statement) -> {
          boolean any = later.stream().anyMatch(c -> row[table.columns().indexOf(c)] != null);
          for (int at = 0; any && at < bound.size(); at++) {
            Column column = bound.get(at);
            column.bind(statement, at + 1, row[table.columns().indexOf(column)]);
          }
          return any;
        });
  }

  private interface Binding {
    /** Whether the statement is to be run for this row. */
    boolean bind(@Nullable Object[] row, PreparedStatement statement) throws SQLException;
  }

  private void eachRow(Table table, String sql, Binding binding) throws SQLException, IOException {
    try (PreparedStatement statement = to.prepareStatement(sql);
        BufferedReader lines = archive.lines(file(table))) {
      long length = 0;
      int rows = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (bind(table, line, binding, statement)) {
          statement.addBatch();
          rows++;
          length += line.length();
        }
        if (length > LONGEST_BATCH || rows == MOST_ROWS) {
          statement.executeBatch();
          length = 0;
          rows = 0;
        }
      }
      statement.executeBatch();
    }
  }

  private static boolean bind(
      Table table, String line, Binding binding, PreparedStatement statement) throws SQLException {
    try {
      return binding.bind(RowLine.values(line, table.columns()), statement);
    } catch (IllegalArgumentException | ClassCastException | DateTimeException wrong) {
      throw Refused.unacceptable(
          "A row of the table %s in this archive does not fit its columns."
              .formatted(table.name()));
    }
  }

  private void refuseOtherContents(List<Table> tables) throws SQLException {
    for (Table table : tables) {
      Manifest.TableFile file = file(table);
      Contents there = ReadTable.contents(table, to);
      if (there.rows() != file.rows() || !there.digest().equals(file.contents())) {
        throw Refused.unacceptable(
            "The table %s does not hold what the archive says: %d rows of %d, or other values."
                .formatted(table.name(), there.rows(), file.rows()));
      }
    }
  }

  private Manifest.TableFile file(Table table) {
    return Objects.requireNonNull(files.get(table.name()));
  }
}
