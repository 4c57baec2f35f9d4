package dev.flangewright.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Says where the chains of the journal stand now. */
@Service
public class Checkpoints {

  private final JdbcClient jdbc;
  private final Clock clock;

  Checkpoints(JdbcClient jdbc, Clock clock) {
    this.jdbc = jdbc;
    this.clock = clock;
  }

  /** Of every chain, in the order of their names. */
  @Transactional(readOnly = true)
  public List<Checkpoint> all() {
    return jdbc.sql("select chain, entries, head from journal_head order by chain")
        .query(this::checkpoint)
        .list();
  }

  /** Of one chain; that of a build in which nothing was changed yet has no entries. */
  @Transactional(readOnly = true)
  public Checkpoint of(String chain) {
    return jdbc.sql("select chain, entries, head from journal_head where chain = ?")
        .param(chain)
        .query(this::checkpoint)
        .optional()
        .orElseGet(() -> new Checkpoint(chain, 0, Sha256.NOTHING, now()));
  }

  private Checkpoint checkpoint(ResultSet row, int number) throws SQLException {
    return new Checkpoint(
        row.getString("chain"), row.getLong("entries"), row.getString("head"), now());
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }
}
