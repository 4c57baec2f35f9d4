package dev.flangewright.records.archive;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.io.JsonStringEncoder;
import tools.jackson.core.json.JsonFactory;

/** A row of a table as one line of JSON: an object with all columns, in the table's order. */
final class RowLine {

  /** A photo as Base64 is one string; nothing in the program stores as much in one value. */
  private static final int LONGEST_VALUE = 256 * 1024 * 1024;

  private static final JsonFactory JSON =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxStringLength(LONGEST_VALUE).build())
          .build();

  private RowLine() {}

  static String of(ResultSet row, List<Column> columns) throws SQLException {
    StringBuilder line = new StringBuilder("{");
    for (int at = 1; at <= columns.size(); at++) {
      Column column = columns.get(at - 1);
      line.append(at == 1 ? "" : ",").append('"').append(column.name()).append("\":");
      append(line, column.type().read(row, at));
    }
    return line.append('}').toString();
  }

  private static void append(StringBuilder line, @Nullable Object value) {
    if (value instanceof String text) {
      line.append('"');
      quote(line, text);
      line.append('"');
    } else {
      line.append(value);
    }
  }

  private static void quote(StringBuilder line, String text) {
    int from = line.length();
    JsonStringEncoder.getInstance().quoteAsString(text, line);
    for (int at = from; at < line.length(); at++) {
      if (Character.isSurrogate(line.charAt(at)) && isAlone(line, at)) {
        line.replace(at, at + 1, "\\u%04x".formatted((int) line.charAt(at)));
      }
    }
  }

  /** Half a character, which UTF-8 cannot write, but a text may hold. */
  private static boolean isAlone(StringBuilder line, int at) {
    return Character.isHighSurrogate(line.charAt(at))
        ? at + 1 == line.length() || !Character.isLowSurrogate(line.charAt(at + 1))
        : !Character.isHighSurrogate(line.charAt(at - 1));
  }

  /**
   * The values of a line in the order of the columns.
   *
   * @throws IllegalArgumentException if the line is not such an object
   */
  static @Nullable Object[] values(String line, List<Column> columns) {
    @Nullable Object[] values = new Object[columns.size()];
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), line)) {
      require(json.nextToken() == JsonToken.START_OBJECT);
      for (int at = 0; at < values.length; at++) {
        require(columns.get(at).name().equals(json.nextName()));
        json.nextToken();
        values[at] = value(json);
      }
      require(json.nextToken() == JsonToken.END_OBJECT && json.nextToken() == null);
    } catch (JacksonException broken) {
      throw new IllegalArgumentException("no JSON", broken);
    }
    return values;
  }

  private static @Nullable Object value(JsonParser json) {
    return switch (json.currentToken()) {
      case VALUE_STRING -> json.getString();
      case VALUE_NUMBER_INT -> json.getLongValue();
      case VALUE_NUMBER_FLOAT -> json.getString();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> null;
      default -> throw new IllegalArgumentException("not a plain value");
    };
  }

  private static void require(boolean asExpected) {
    if (!asExpected) {
      throw new IllegalArgumentException("not an object with all columns in order");
    }
  }
}
