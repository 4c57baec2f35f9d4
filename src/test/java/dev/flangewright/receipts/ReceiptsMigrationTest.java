package dev.flangewright.receipts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.testing.TestDatabase;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A receipt from when only entries on pieces left one. */
@Tag("database")
class ReceiptsMigrationTest {

  private static final String NOW = "timestamp with time zone '2026-06-02 12:00:00+00:00'";

  private final DataSource source = TestDatabase.fresh();
  private final JdbcClient database = JdbcClient.create(source);

  @Test
  void a_receipt_says_which_piece_it_was_for() {
    Flyway.configure().dataSource(source).target("3").load().migrate();
    run("insert into build values (1, 0, 'Hull', '', '', '', " + NOW + ")");
    run("insert into frame values (1, 0, 1, 'F7', '2100')");
    run(
        "insert into part (id, version, build_id, frame_id, part_number, segment, hand, drawing,"
            + " drawing_issue, alloy, temper, thickness, inside_bend_radius_mm, block_set,"
            + " figures_version) values (1, 0, 1, 1, 'P-1', 'S1', 'LEFT', 'D', 'A', '2024', 'O',"
            + " '1.2', '3', '', 0)");
    run(
        "insert into piece values (7, 0, 1, 1, 1, 'IN_WORK', 0, 6, 'cut', 'Cut', false, false, "
            + NOW
            + ", 'ann')");
    Flyway.configure().dataSource(source).target("12").load().migrate();
    run("insert into receipt values (1, 0, 'ann', 'a-key', 7, 'a-digest', 3, " + NOW + ")");

    Flyway.configure().dataSource(source).load().migrate();

    assertThat(
            database
                .sql("select account, entry_key, subject, content, answer from receipt")
                .query()
                .singleRow())
        .containsEntry("account", "ann")
        .containsEntry("entry_key", "a-key")
        .containsEntry("subject", "piece 7")
        .containsEntry("content", "a-digest")
        .containsEntry("answer", 7L);
  }

  private void run(String sql) {
    database.sql(sql).update();
  }
}
