package dev.flangewright.blocks.web;

import dev.flangewright.blocks.Block;
import dev.flangewright.blocks.BlockChange;
import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockKind;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;

/** A block with its log. */
record BlockAnswer(
    long id,
    long blockSetId,
    @Schema(description = "Send it back with a change; a later one is refused then.")
        long blockVersion,
    BlockKind kind,
    @Schema(description = "From 1 for a form block; 0 for a kind that serves every stage.")
        int formingStage,
    String material,
    @Schema(description = "Where it lies, if not with its set.") String place,
    BlockCondition condition,
    @Schema(description = "Oldest first.") List<ChangeAnswer> log) {

  /** A line of the log. */
  record ChangeAnswer(BlockCondition became, String who, Instant doneAt, String why) {

    static ChangeAnswer of(BlockChange change) {
      return new ChangeAnswer(change.became(), change.who(), change.doneAt(), change.why());
    }
  }

  static BlockAnswer of(Block block) {
    return new BlockAnswer(
        block.id(),
        block.blockSet().id(),
        block.version(),
        block.facts().kind(),
        block.facts().formingStage(),
        block.facts().material(),
        block.facts().place(),
        block.condition(),
        block.changes().stream().map(ChangeAnswer::of).toList());
  }
}
