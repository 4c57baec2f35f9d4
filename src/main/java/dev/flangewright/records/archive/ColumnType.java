package dev.flangewright.records.archive;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * How the values of a column stand in an archive: the same for the same value on either engine, and
 * exact. The text of a double is the one from which the same double is read again.
 */
enum ColumnType {
  TEXT {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      return row.getString(at);
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setString(at, (String) written);
    }
  },
  WHOLE {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      long value = row.getLong(at);
      return row.wasNull() ? null : value;
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setLong(at, (Long) written);
    }
  },
  /** As text where JSON has no number for what is none; −0 is 0, which H2 makes of it anyway. */
  REAL {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      double value = row.getDouble(at);
      if (row.wasNull()) {
        return null;
      }
      return Double.isFinite(value) ? (Object) (value == 0 ? 0.0 : value) : Double.toString(value);
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setDouble(at, Double.parseDouble(written.toString()));
    }
  },
  DECIMAL {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      BigDecimal value = row.getBigDecimal(at);
      return value == null ? null : value.toPlainString();
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setBigDecimal(at, new BigDecimal((String) written));
    }
  },
  TRUTH {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      boolean value = row.getBoolean(at);
      return row.wasNull() ? null : value;
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setBoolean(at, (Boolean) written);
    }
  },
  /** A moment in UTC, to the fraction of a second that is stored (ISO 8601). */
  MOMENT {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      OffsetDateTime value = row.getObject(at, OffsetDateTime.class);
      return value == null ? null : value.toInstant().toString();
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setObject(at, Instant.parse((String) written).atOffset(ZoneOffset.UTC));
    }
  },
  LOCAL_TIME {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      LocalDateTime value = row.getObject(at, LocalDateTime.class);
      return value == null ? null : value.toString();
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setObject(at, LocalDateTime.parse((String) written));
    }
  },
  DAY {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      LocalDate value = row.getObject(at, LocalDate.class);
      return value == null ? null : value.toString();
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setObject(at, LocalDate.parse((String) written));
    }
  },
  NUMBER_OF_ITS_OWN {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      UUID value = row.getObject(at, UUID.class);
      return value == null ? null : value.toString();
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setObject(at, UUID.fromString((String) written));
    }
  },
  /** Base64 (RFC 4648). */
  BYTES {
    @Override
    @Nullable Object read(ResultSet row, int at) throws SQLException {
      byte[] value = row.getBytes(at);
      return value == null ? null : Base64.getEncoder().encodeToString(value);
    }

    @Override
    void bind(PreparedStatement to, int at, Object written) throws SQLException {
      to.setBytes(at, Base64.getDecoder().decode((String) written));
    }
  };

  /** The value as the archive writes it: a text, a number or a truth value; null for no value. */
  abstract @Nullable Object read(ResultSet row, int at) throws SQLException;

  /**
   * Binds what an archive says.
   *
   * @throws IllegalArgumentException if it is not written as this type is
   * @throws ClassCastException likewise
   * @throws java.time.DateTimeException likewise
   */
  abstract void bind(PreparedStatement to, int at, Object written) throws SQLException;

  /**
   * @throws IllegalStateException for a type that no archive holds yet: rather no archive than one
   *     in which something is missing
   */
  static ColumnType of(int jdbcType, String engineName) {
    return switch (engineName.toLowerCase(Locale.ROOT)) {
      case "uuid" -> NUMBER_OF_ITS_OWN;
      case "timestamptz" -> MOMENT;
      default -> of(jdbcType).orElseThrow(() -> new IllegalStateException(unknown(engineName)));
    };
  }

  private static String unknown(String engineName) {
    return "An archive cannot hold columns of the type " + engineName;
  }

  private static Optional<ColumnType> of(int jdbcType) {
    return Optional.ofNullable(
        switch (jdbcType) {
          case Types.CHAR, Types.VARCHAR, Types.LONGVARCHAR, Types.CLOB -> TEXT;
          case Types.TINYINT, Types.SMALLINT, Types.INTEGER, Types.BIGINT -> WHOLE;
          case Types.DOUBLE, Types.FLOAT -> REAL;
          case Types.NUMERIC, Types.DECIMAL -> DECIMAL;
          case Types.BOOLEAN, Types.BIT -> TRUTH;
          case Types.TIMESTAMP_WITH_TIMEZONE -> MOMENT;
          case Types.TIMESTAMP -> LOCAL_TIME;
          case Types.DATE -> DAY;
          case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY, Types.BLOB -> BYTES;
          default -> null;
        });
  }
}
