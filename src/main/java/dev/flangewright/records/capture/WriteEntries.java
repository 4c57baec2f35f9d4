package dev.flangewright.records.capture;

import dev.flangewright.records.Chains;
import dev.flangewright.records.Change;
import dev.flangewright.records.JournalEntry;
import dev.flangewright.records.Sha256;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SortedMap;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.jspecify.annotations.Nullable;

/** Adds entries to their chains, on the connection of the transaction that made the changes. */
final class WriteEntries {

  private static final int AT_A_TIME = 200;

  private final SharedSessionContractImplementor session;
  private final Connection connection;

  WriteEntries(SharedSessionContractImplementor session) {
    this.session = session;
    this.connection = session.getJdbcCoordinator().getLogicalConnection().getPhysicalConnection();
  }

  /** In the order of the chains' names, so that two transactions do not wait for each other. */
  void write(SortedMap<String, List<Change>> chains) {
    try {
      for (var chain : chains.entrySet()) {
        write(chain.getKey(), chain.getValue());
      }
    } catch (SQLException failed) {
      throw session
          .getJdbcServices()
          .getSqlExceptionHelper()
          .convert(failed, "the journal could not be written");
    }
  }

  private void write(String chain, List<Change> changes) throws SQLException {
    Head head = lockedOrBegun(chain);
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into journal_entry (chain, seq, written_at, who, part, line, hash)"
                + " values (?, ?, ?, ?, ?, ?, ?)")) {
      for (Change change : changes) {
        JournalEntry entry = new JournalEntry(chain, head.entries() + 1, head.hash(), change);
        String line = entry.line();
        head = new Head(entry.seq(), Sha256.of(line));
        add(insert, entry, line, head.hash());
      }
      insert.executeBatch();
    }
    keep(chain, head);
  }

  private static void add(PreparedStatement insert, JournalEntry entry, String line, String hash)
      throws SQLException {
    insert.setString(1, entry.chain());
    insert.setLong(2, entry.seq());
    insert.setObject(3, entry.change().at().atOffset(ZoneOffset.UTC));
    insert.setString(4, entry.change().who());
    insert.setString(5, entry.change().part());
    insert.setString(6, line);
    insert.setString(7, hash);
    insert.addBatch();
    if (entry.seq() % AT_A_TIME == 0) {
      insert.executeBatch();
    }
  }

  /** Where a chain stands. */
  private record Head(long entries, String hash) {}

  /** Chains begin one after the other, or two would begin the same. */
  private Head lockedOrBegun(String chain) throws SQLException {
    Head head = locked(chain);
    if (head != null) {
      return head;
    }
    locked(Chains.INSTALLATION);
    head = locked(chain);
    return head == null ? begun(chain) : head;
  }

  private @Nullable Head locked(String chain) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select entries, head from journal_head where chain = ? for update")) {
      select.setString(1, chain);
      try (ResultSet row = select.executeQuery()) {
        return row.next() ? new Head(row.getLong(1), row.getString(2)) : null;
      }
    }
  }

  private Head begun(String chain) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into journal_head (chain, entries, head) values (?, 0, ?)")) {
      insert.setString(1, chain);
      insert.setString(2, Sha256.NOTHING);
      insert.executeUpdate();
    }
    return new Head(0, Sha256.NOTHING);
  }

  private void keep(String chain, Head head) throws SQLException {
    try (PreparedStatement update =
        connection.prepareStatement(
            "update journal_head set entries = ?, head = ? where chain = ?")) {
      update.setLong(1, head.entries());
      update.setString(2, head.hash());
      update.setString(3, chain);
      update.executeUpdate();
    }
  }
}
