package dev.flangewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.records.Verdict.Broken;
import dev.flangewright.records.Verdict.Old;
import java.util.Collections;
import org.junit.jupiter.api.Test;

class VerifyJournalTest {

  private final AJournal journal = AJournal.of(9, "as it was");
  private final Checkpoint whole = journal.checkpoint();

  @Test
  void an_untouched_history_is_sound_and_says_where_it_ends() {
    Verdict verdict = journal.verdict(null);
    assertThat(verdict.isSound()).isTrue();
    assertThat(verdict.count()).isEqualTo(9);
    assertThat(verdict.head()).isEqualTo(whole.head());
  }

  @Test
  void an_empty_history_is_sound() {
    assertThat(new AJournal().verdict(null).isSound()).isTrue();
  }

  @Test
  void an_entry_that_was_edited_is_named() {
    journal.edit(4, false);
    assertThat(journal.verdict(null).broken())
        .isEqualTo(new Broken(4, "was changed after it was written: its hash does not fit"));
  }

  @Test
  void an_entry_that_was_edited_together_with_its_hash_breaks_the_next_one() {
    journal.edit(4, true);
    Verdict verdict = journal.verdict(null);
    assertThat(verdict.broken()).isNotNull();
    assertThat(verdict.broken().seq()).isEqualTo(5);
    assertThat(verdict.sentence()).contains("previous hash does not fit");
  }

  @Test
  void an_entry_that_was_taken_out_of_the_middle_is_named() {
    journal.links.remove(3);
    assertThat(VerifyJournal.of(journal.links.iterator(), whole, null).broken())
        .isEqualTo(new Broken(4, "is missing: entry 5 comes next"));
  }

  @Test
  void two_entries_that_changed_places_are_named() {
    Collections.swap(journal.links, 3, 4);
    assertThat(journal.verdict(null).broken())
        .isEqualTo(new Broken(4, "is missing: entry 5 comes next"));
  }

  @Test
  void an_entry_that_stands_there_twice_is_named() {
    journal.links.add(4, journal.links.get(3));
    assertThat(journal.verdict(null).sentence()).startsWith("Entry 5 is out of order");
  }

  @Test
  void what_is_no_entry_and_what_is_of_another_chain_are_named() {
    journal.links.set(2, Link.inFile("{}"));
    assertThat(journal.verdict(null).sentence()).isEqualTo("Entry 3 is no entry of a journal.");
    journal.links.set(
        1, Link.inFile(journal.links.get(1).line().replace("\"build-1\"", "\"build-2\"")));
    assertThat(journal.verdict(null).sentence()).isEqualTo("Entry 2 belongs to the chain build-2.");
  }

  @Test
  void a_head_that_knows_of_more_entries_shows_that_the_end_was_cut_off() {
    journal.links.remove(8);
    assertThat(VerifyJournal.of(journal.links.iterator(), whole, null).broken())
        .isEqualTo(new Broken(9, "is missing: there should be 9"));
  }

  @Test
  void a_tail_cut_off_together_with_the_head_is_shown_by_an_old_checkpoint_alone() {
    journal.links.subList(6, 9).clear();
    assertThat(journal.verdict(null).isSound()).isTrue();
    Verdict verdict = journal.verdict(whole);
    assertThat(verdict.old()).isEqualTo(Old.SHORTER);
    assertThat(verdict.isSound()).isFalse();
  }

  @Test
  void a_history_written_anew_is_shown_by_an_old_checkpoint_alone() {
    AJournal other = AJournal.of(12, "as somebody wishes it were");
    assertThat(other.verdict(null).isSound()).isTrue();
    Verdict verdict = other.verdict(whole);
    assertThat(verdict.old()).isEqualTo(Old.REWRITTEN);
    assertThat(verdict.isSound()).isFalse();
  }

  @Test
  void a_history_that_went_on_still_contains_every_earlier_checkpoint() {
    Checkpoint empty = new AJournal().checkpoint();
    journal.add("later");
    assertThat(journal.verdict(whole).old()).isEqualTo(Old.CONTAINED);
    assertThat(journal.verdict(empty).old()).isEqualTo(Old.CONTAINED);
    assertThat(journal.verdict(journal.checkpoint()).isSound()).isTrue();
  }

  @Test
  void a_break_after_the_checkpoint_leaves_the_checkpoint_contained() {
    journal.add("later");
    journal.edit(10, false);
    Verdict verdict = journal.verdict(whole);
    assertThat(verdict.old()).isEqualTo(Old.CONTAINED);
    assertThat(verdict.isSound()).isFalse();
  }

  @Test
  void a_break_before_the_checkpoint_leaves_it_undecided() {
    journal.edit(4, false);
    Verdict verdict = journal.verdict(whole);
    assertThat(verdict.old()).isNull();
    assertThat(verdict.oldSentence()).contains("broken before it");
  }

  @Test
  void a_checkpoint_of_another_chain_decides_nothing() {
    Checkpoint other = new Checkpoint("build-2", 9, whole.head(), AJournal.NOW);
    assertThat(journal.verdict(other).old()).isEqualTo(Old.OF_ANOTHER_CHAIN);
  }

  @Test
  void a_checkpoint_is_read_as_it_was_printed_also_over_two_lines() {
    String head = whole.head();
    String printed =
        whole.text().replace(head, head.substring(0, 32) + "\n  " + head.substring(32));
    assertThat(Checkpoint.read(whole.text())).contains(whole);
    assertThat(Checkpoint.read(" " + printed + "\n")).contains(whole);
    assertThat(Checkpoint.read("checkpoint build-1 9 abc 2031-05-04T10:00:00Z")).isEmpty();
    assertThat(Checkpoint.read(whole.text().replace("05-04", "15-04"))).isEmpty();
    assertThat(Checkpoint.read("")).isEmpty();
  }
}
