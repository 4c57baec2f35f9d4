package dev.flangewright.records.archive;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Finds every table of a database, so that none is ever forgotten, in an order in which rows refer
 * to rows that are there already.
 */
final class Tables {

  /** Who is signed in at the moment is no record; the schema's own history is its version. */
  private static final Set<String> LEFT_OUT =
      Set.of("spring_session", "spring_session_attributes", "flyway_schema_history");

  private static final String[] AS_EITHER_ENGINE_CALLS_THEM = {"TABLE", "BASE TABLE"};

  /** A column that refers to a table. */
  private record Reference(String column, String to) {}

  private final Connection connection;
  private final DatabaseMetaData data;
  private final Map<String, String> engineNames = new TreeMap<>();
  private final Map<String, List<Reference>> references = new TreeMap<>();

  private Tables(Connection connection) throws SQLException {
    this.connection = connection;
    this.data = connection.getMetaData();
  }

  /** All tables that belong into an archive, in foreign-key order. */
  static List<Table> of(Connection connection) throws SQLException {
    return new Tables(connection).inOrder();
  }

  private List<Table> inOrder() throws SQLException {
    findNames();
    for (String name : engineNames.keySet()) {
      references.put(name, referencesOf(name));
    }
    Set<String> order = new LinkedHashSet<>();
    Set<String> onTheWay = new LinkedHashSet<>();
    engineNames.keySet().forEach(name -> visit(name, onTheWay, order));
    List<Table> tables = new ArrayList<>();
    Set<String> before = new LinkedHashSet<>();
    for (String name : order) {
      tables.add(table(name, before));
      before.add(name);
    }
    return tables;
  }

  private void findNames() throws SQLException {
    try (ResultSet rows =
        data.getTables(
            connection.getCatalog(), connection.getSchema(), "%", AS_EITHER_ENGINE_CALLS_THEM)) {
      while (rows.next()) {
        String name = rows.getString("TABLE_NAME");
        if (!LEFT_OUT.contains(lower(name))) {
          engineNames.put(lower(name), name);
        }
      }
    }
  }

  /** What a table refers to comes before it; where that goes in a circle, the circle is cut. */
  private void visit(String name, Set<String> onTheWay, Set<String> order) {
    if (engineNames.containsKey(name) && onTheWay.add(name)) {
      references.getOrDefault(name, List.of()).forEach(to -> visit(to.to(), onTheWay, order));
      order.add(name);
    }
  }

  private List<Reference> referencesOf(String name) throws SQLException {
    List<Reference> found = new ArrayList<>();
    try (ResultSet rows =
        data.getImportedKeys(
            connection.getCatalog(), connection.getSchema(), engineNames.get(name))) {
      while (rows.next()) {
        found.add(
            new Reference(
                lower(rows.getString("FKCOLUMN_NAME")), lower(rows.getString("PKTABLE_NAME"))));
      }
    }
    return found;
  }

  private Table table(String name, Set<String> before) throws SQLException {
    Set<String> later =
        references.getOrDefault(name, List.of()).stream()
            .filter(reference -> !before.contains(reference.to()))
            .map(Reference::column)
            .collect(Collectors.toSet());
    List<Column> columns =
        columns(name).stream()
            .map(column -> later.contains(column.name()) ? column.filledLater() : column)
            .toList();
    List<String> key = keyOf(name);
    List<Column> keyColumns =
        columns.stream().filter(column -> key.contains(column.name())).toList();
    return new Table(name, quoted(String.valueOf(engineNames.get(name))), columns, keyColumns);
  }

  private List<Column> columns(String name) throws SQLException {
    List<Column> columns = new ArrayList<>();
    String pattern = escaped(String.valueOf(engineNames.get(name)));
    try (ResultSet rows =
        data.getColumns(connection.getCatalog(), connection.getSchema(), pattern, "%")) {
      while (rows.next()) {
        String column = rows.getString("COLUMN_NAME");
        int jdbcType = rows.getInt("DATA_TYPE");
        ColumnType type = ColumnType.of(jdbcType, rows.getString("TYPE_NAME"));
        columns.add(new Column(lower(column), quoted(column), type, jdbcType, false));
      }
    }
    return columns;
  }

  private List<String> keyOf(String name) throws SQLException {
    List<String> key = new ArrayList<>();
    try (ResultSet rows =
        data.getPrimaryKeys(
            connection.getCatalog(), connection.getSchema(), engineNames.get(name))) {
      while (rows.next()) {
        key.add(lower(rows.getString("COLUMN_NAME")));
      }
    }
    return key;
  }

  /** The name as a pattern that finds this table alone: "_" stands for any letter otherwise. */
  private String escaped(String name) throws SQLException {
    return name.replace("_", data.getSearchStringEscape() + "_");
  }

  private static String quoted(String name) {
    return '"' + name + '"';
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
