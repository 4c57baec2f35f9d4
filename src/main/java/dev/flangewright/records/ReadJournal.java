package dev.flangewright.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads a chain from its beginning, some hundred entries at a time. */
@Component
class ReadJournal {

  private static final int AT_A_TIME = 500;

  private final JdbcClient jdbc;

  ReadJournal(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  Iterator<Link> of(String chain) {
    return new Walk(chain);
  }

  private List<Row> after(String chain, long seq) {
    return jdbc.sql(
            "select seq, written_at, who, part, line, hash from journal_entry"
                + " where chain = ? and seq > ? order by seq limit "
                + AT_A_TIME)
        .param(chain)
        .param(seq)
        .query(ReadJournal::row)
        .list();
  }

  private static Row row(ResultSet row, int number) throws SQLException {
    long seq = row.getLong("seq");
    String line = row.getString("line");
    Instant at = row.getObject("written_at", OffsetDateTime.class).toInstant();
    boolean fits =
        JournalLine.says(line, at, row.getString("who"), row.getString("part"))
            && line.contains(",\"seq\":" + seq + ",\"who\":\"");
    return new Row(
        seq, new Link(line, row.getString("hash"), fits ? null : "has columns that contradict it"));
  }

  private record Row(long seq, Link link) {}

  /** Asks for the next few when those at hand are through. */
  private final class Walk implements Iterator<Link> {

    private final String chain;
    private final List<Row> atHand = new ArrayList<>();
    private int next;

    Walk(String chain) {
      this.chain = chain;
    }

    @Override
    public boolean hasNext() {
      if (next == atHand.size()) {
        long seen = atHand.isEmpty() ? Long.MIN_VALUE : atHand.get(next - 1).seq();
        atHand.clear();
        atHand.addAll(after(chain, seen));
        next = 0;
      }
      return next < atHand.size();
    }

    @Override
    public Link next() {
      if (!hasNext()) {
        throw new NoSuchElementException();
      }
      return atHand.get(next++).link();
    }
  }
}
