package dev.flangewright.blocks;

import static dev.flangewright.blocks.BlockCondition.IN_USE;
import static dev.flangewright.blocks.BlockCondition.NEEDS_REPAIR;
import static dev.flangewright.blocks.BlockCondition.READY;
import static dev.flangewright.blocks.BlockCondition.SCRAPPED;
import static dev.flangewright.blocks.BlockCondition.TO_MAKE;
import static dev.flangewright.blocks.BlockKind.BACKING_BLOCK;
import static dev.flangewright.blocks.BlockKind.DRILL_TEMPLATE;
import static dev.flangewright.blocks.BlockKind.FORM_BLOCK;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Whether work can go on with the blocks of a set. */
class BlocksOfSetTest {

  @Test
  void a_block_on_the_shelf_or_at_the_bench_is_ready_for_work() {
    assertThat(set(form(1, READY)).notReady(FORM_BLOCK, 1)).isEmpty();
    assertThat(set(form(1, IN_USE)).notReady(FORM_BLOCK, 1)).isEmpty();
  }

  @Test
  void a_refusal_names_block_stage_set_and_what_it_waits_for() {
    assertThat(set(form(1, READY), form(2, NEEDS_REPAIR)).notReady(FORM_BLOCK, 2))
        .hasValue("The form block, stage 2 of B7 needs repair.");
    assertThat(set(line(BACKING_BLOCK, 0, TO_MAKE)).notReady(BACKING_BLOCK, 2))
        .hasValue("The backing block of B7 is still to make.");
  }

  @Test
  void each_forming_stage_has_its_own_form_block() {
    BlocksOfSet set = set(form(1, READY), form(2, TO_MAKE));
    assertThat(set.notReady(FORM_BLOCK, 1)).isEmpty();
    assertThat(set.notReady(FORM_BLOCK, 2)).isPresent();
    assertThat(set.isReady()).isFalse();
  }

  @Test
  void a_scrapped_block_stands_in_the_way_until_another_is_recorded() {
    assertThat(set(form(1, SCRAPPED)).notReady(FORM_BLOCK, 1))
        .hasValue("The form block, stage 1 of B7 was scrapped, and no other is recorded.");
    assertThat(set(form(1, SCRAPPED), form(1, TO_MAKE)).notReady(FORM_BLOCK, 1))
        .hasValue("The form block, stage 1 of B7 is still to make.");
    BlocksOfSet remade = set(form(1, SCRAPPED), form(1, READY));
    assertThat(remade.notReady(FORM_BLOCK, 1)).isEmpty();
    assertThat(remade.isReady()).isTrue();
  }

  @Test
  void of_two_like_blocks_one_that_is_fit_is_enough() {
    assertThat(set(form(1, NEEDS_REPAIR), form(1, READY)).notReady(FORM_BLOCK, 1)).isEmpty();
  }

  @Test
  void only_what_is_recorded_stands_in_the_way() {
    assertThat(set(form(1, TO_MAKE)).notReady(DRILL_TEMPLATE, 0)).isEmpty();
    assertThat(set(form(1, TO_MAKE)).notReady(FORM_BLOCK, 2)).isEmpty();
    assertThat(BlocksOfBuild.of(List.of()).notReady("nobody's", FORM_BLOCK, 1)).isEmpty();
    assertThat(set().isReady()).isFalse();
  }

  @Test
  void the_blocks_of_a_build_are_told_apart_by_their_set() {
    BlocksOfBuild build =
        BlocksOfBuild.of(
            List.of(
                new BlockLine(1, "B7", FORM_BLOCK, 1, READY),
                new BlockLine(2, "B8", FORM_BLOCK, 1, TO_MAKE)));
    assertThat(build.notReady("B7", FORM_BLOCK, 1)).isEmpty();
    assertThat(build.notReady("B8", FORM_BLOCK, 1))
        .hasValue("The form block, stage 1 of B8 is still to make.");
  }

  @Test
  void what_is_wrong_with_a_set_is_said_once_a_kind_and_stage() {
    assertThat(set(form(2, TO_MAKE), form(1, NEEDS_REPAIR), form(1, NEEDS_REPAIR)).problems())
        .containsExactly(
            "The form block, stage 1 of B7 needs repair.",
            "The form block, stage 2 of B7 is still to make.");
  }

  private static BlocksOfSet set(BlockLine... blocks) {
    return new BlocksOfSet("B7", List.of(blocks));
  }

  private static BlockLine form(int stage, BlockCondition condition) {
    return line(FORM_BLOCK, stage, condition);
  }

  private static BlockLine line(BlockKind kind, int stage, BlockCondition condition) {
    return new BlockLine(1, "B7", kind, stage, condition);
  }
}
