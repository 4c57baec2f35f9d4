package dev.flangewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.records.Verdict.Old;
import dev.flangewright.testing.DatabaseTest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What somebody may do who can write the tables, and what shows it. */
@DatabaseTest
class TamperingTest {

  @Autowired ApplicationContext context;
  @Autowired CheckJournal check;
  @Autowired Checkpoints checkpoints;
  @Autowired JdbcClient jdbc;

  private String chain;
  private Checkpoint before;

  @BeforeEach
  void aHistory() {
    AWorkshop shop = AWorkshop.in(context);
    chain = Chains.ofBuild(shop.buildId());
    shop.begin(shop.part("TW-1"));
    before = checkpoints.of(chain);
    assertThat(before.count()).isGreaterThan(8);
    assertThat(check.of(chain, before).isSound()).isTrue();
  }

  @Test
  void an_edited_line_is_named() {
    run(
        "update journal_entry set line = replace(line, '\"id\":\"', '\"id\":\"9') where chain = ? and seq = 3");
    assertThat(check.of(chain, null).sentence()).startsWith("Entry 3 was changed");
  }

  @Test
  void an_edited_column_is_named_as_it_hides_the_entry_from_whoever_looks_for_it() {
    run("update journal_entry set who = 'somebody' where chain = ? and seq = 3");
    assertThat(check.of(chain, null).sentence())
        .isEqualTo("Entry 3 has columns that contradict it.");
  }

  @Test
  void a_deleted_row_is_named() {
    run("delete from journal_entry where chain = ? and seq = 4");
    assertThat(check.of(chain, null).sentence()).startsWith("Entry 4 is missing");
  }

  @Test
  void two_rows_that_changed_places_are_named() {
    run("update journal_entry set seq = -4 where chain = ? and seq = 4");
    run("update journal_entry set seq = 4 where chain = ? and seq = 5");
    run("update journal_entry set seq = 5 where chain = ? and seq = -4");
    assertThat(check.of(chain, null).sentence()).startsWith("Entry 4 is missing: entry 5");
  }

  @Test
  void a_tail_cut_off_is_shown_by_the_head_and_without_it_by_a_checkpoint_alone() {
    run("delete from journal_entry where chain = ? and seq > 6");
    assertThat(check.of(chain, null).sentence()).startsWith("Entry 7 is missing");
    String last =
        jdbc.sql("select hash from journal_entry where chain = ? and seq = 6")
            .param(chain)
            .query(String.class)
            .single();
    jdbc.sql("update journal_head set entries = 6, head = ? where chain = ?")
        .params(last, chain)
        .update();
    assertThat(check.of(chain, null).isSound()).isTrue();
    assertThat(check.of(chain, before).old()).isEqualTo(Old.SHORTER);
  }

  @Test
  void a_history_written_anew_is_shown_by_a_checkpoint_alone() {
    List<String> lines =
        jdbc.sql("select line from journal_entry where chain = ? order by seq")
            .param(chain)
            .query(String.class)
            .list();
    String previous = Sha256.NOTHING;
    for (String line : new ArrayList<>(lines)) {
      JournalLine old = JournalLine.read(line).orElseThrow();
      String forged = line.replace("TW-1", "TW-9").replace(old.previous(), previous);
      previous = Sha256.of(forged);
      jdbc.sql(
              "update journal_entry set line = ?, hash = ?, part = replace(part, 'TW-1', 'TW-9')"
                  + " where chain = ? and seq = ?")
          .params(forged, previous, chain, old.seq())
          .update();
    }
    jdbc.sql("update journal_head set head = ? where chain = ?").params(previous, chain).update();
    assertThat(check.of(chain, null).isSound()).isTrue();
    assertThat(check.of(chain, before).old()).isEqualTo(Old.REWRITTEN);
  }

  private void run(String statement) {
    assertThat(jdbc.sql(statement).param(chain).update()).isPositive();
  }
}
