package dev.flangewright.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.parts.Build;
import dev.flangewright.people.Refused;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.BeanUtils;

/** What happens to a block, and what cannot. */
class BlockTest {

  private static final Instant NOON = Instant.parse("2026-06-02T12:00:00Z");

  @Test
  void a_block_is_made_taken_and_put_back() {
    Block block = block(BlockCondition.TO_MAKE);
    block.makeReady(by("fay", ""));
    assertThat(block.condition()).isEqualTo(BlockCondition.READY);
    block.take(by("vic", ""));
    assertThat(block.condition()).isEqualTo(BlockCondition.IN_USE);
    block.putBack(by("vic", ""));
    assertThat(block.condition()).isEqualTo(BlockCondition.READY);
  }

  @Test
  void a_damaged_block_waits_for_repair_and_is_ready_again() {
    Block block = block(BlockCondition.READY);
    block.reportDamage(by("vic", "corner chipped"));
    assertThat(block.condition()).isEqualTo(BlockCondition.NEEDS_REPAIR);
    assertThatThrownBy(() -> block.take(by("vic", "")))
        .isInstanceOf(Refused.class)
        .hasMessage("The form block, stage 1 cannot be taken: it is waiting for repair.");
    block.repaired(by("fay", "corner let in and dressed"));
    assertThat(block.condition()).isEqualTo(BlockCondition.READY);
  }

  @Test
  void damage_found_on_a_block_that_waits_for_repair_is_not_lost() {
    Block block = block(BlockCondition.READY);
    block.reportDamage(by("vic", "corner chipped"));
    block.reportDamage(by("ann", "pin hole worn too"));
    assertThat(block.condition()).isEqualTo(BlockCondition.NEEDS_REPAIR);
    assertThat(block.changes())
        .extracting(BlockChange::why)
        .containsExactly("recorded", "corner chipped", "pin hole worn too");
  }

  @Test
  void the_log_says_who_brought_it_into_which_condition_when_and_why() {
    Block block = block(BlockCondition.READY);
    block.scrap(by("fay", " split along the grain "));
    BlockChange last = block.changes().get(1);
    assertThat(last.became()).isEqualTo(BlockCondition.SCRAPPED);
    assertThat(last.who()).isEqualTo("fay");
    assertThat(last.doneAt()).isEqualTo(NOON);
    assertThat(last.why()).isEqualTo("split along the grain");
  }

  @ParameterizedTest
  @EnumSource(BlockAction.class)
  void nothing_happens_any_more_to_a_scrapped_block(BlockAction action) {
    Block block = block(BlockCondition.READY);
    block.scrap(by("fay", "split"));
    assertThatThrownBy(() -> block.happens(action, by("fay", "again")))
        .isInstanceOfSatisfying(
            Refused.class, no -> assertThat(no.kind()).isEqualTo(Refused.Kind.CONFLICT));
    assertThat(block.changes()).hasSize(2);
  }

  @Test
  void damage_repair_and_scrap_are_refused_without_words_and_nothing_is_logged() {
    Block block = block(BlockCondition.READY);
    assertThatThrownBy(() -> block.reportDamage(by("vic", "  ")))
        .isInstanceOfSatisfying(
            Refused.class, no -> assertThat(no.kind()).isEqualTo(Refused.Kind.UNACCEPTABLE));
    assertThatThrownBy(() -> block.scrap(by("fay", ""))).isInstanceOf(Refused.class);
    assertThat(block.condition()).isEqualTo(BlockCondition.READY);
    assertThat(block.changes()).hasSize(1);
  }

  @Test
  void what_was_never_made_can_be_neither_taken_nor_damaged_but_given_up() {
    Block block = block(BlockCondition.TO_MAKE);
    assertThatThrownBy(() -> block.take(by("vic", ""))).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> block.reportDamage(by("vic", "x"))).isInstanceOf(Refused.class);
    block.scrap(by("lea", "the part is made on another set"));
    assertThat(block.condition()).isEqualTo(BlockCondition.SCRAPPED);
  }

  private static Block block(BlockCondition condition) {
    BlockSet set =
        new BlockSet(
            BeanUtils.instantiateClass(Build.class), "B7", new BlockSetFacts(null, null, "", ""));
    return set.add(
        new BlockFacts(BlockKind.FORM_BLOCK, 1, "beech", ""), condition, by("fay", "recorded"));
  }

  private static Signed by(String who, String why) {
    return new Signed(who, NOON, why);
  }
}
