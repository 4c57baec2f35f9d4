package dev.flangewright.records.archive;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as the archive sees it.
 *
 * @param name in lower case, as archives name it
 * @param sqlName quoted, as the engine at hand spells it
 * @param columns in the order of the table
 * @param key the columns of its primary key
 */
record Table(String name, String sqlName, List<Column> columns, List<Column> key) {

  List<String> columnNames() {
    return columns.stream().map(Column::name).toList();
  }

  List<Column> filledLater() {
    return columns.stream().filter(Column::later).toList();
  }

  /** By its key: the file of a table then changes only where the table did. */
  String selectAll() {
    String order = key.isEmpty() ? "" : " order by " + list(key);
    return "select " + list(columns) + " from " + sqlName + order;
  }

  String insert() {
    String marks = columns.stream().map(column -> "?").collect(Collectors.joining(", "));
    return "insert into " + sqlName + " (" + list(columns) + ") values (" + marks + ")";
  }

  /** Sets what was left open at first: those columns, then the key. */
  String update() {
    return "update "
        + sqlName
        + " set "
        + equal(filledLater(), ", ")
        + " where "
        + equal(key, " and ");
  }

  String deleteAll() {
    return "delete from " + sqlName;
  }

  boolean holdsBytes() {
    return columns.stream().anyMatch(column -> column.type() == ColumnType.BYTES);
  }

  private static String list(List<Column> columns) {
    return columns.stream().map(Column::sqlName).collect(Collectors.joining(", "));
  }

  private static String equal(List<Column> columns, String between) {
    return columns.stream()
        .map(column -> column.sqlName() + " = ?")
        .collect(Collectors.joining(between));
  }
}
