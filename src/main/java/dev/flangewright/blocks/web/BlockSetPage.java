package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockHand;
import dev.flangewright.blocks.BlockLine;
import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.BlocksOfSet;
import dev.flangewright.blocks.PartBevels;
import dev.flangewright.parts.Part;
import dev.flangewright.photos.Galleries;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A block set as its page shows it.
 *
 * @param answer to the question whether it is ready
 * @param pinMm diameter of the tool pins; empty where unknown
 * @param unfigured the parts that have no bevels, each with the reason
 */
record BlockSetPage(
    long id,
    String code,
    String answer,
    @Nullable BlockHand hand,
    String pinMm,
    String place,
    String note,
    List<BlockView> blocks,
    List<Part> parts,
    List<BevelView> bevels,
    List<String> unfigured) {

  static BlockSetPage of(BlockSet set, List<PartBevels> parts, Galleries photos, Instant now) {
    return new BlockSetPage(
        set.id(),
        set.code(),
        answer(lines(set)),
        set.facts().hand(),
        set.facts().pinText(),
        set.facts().place(),
        set.facts().note(),
        set.blocks().stream()
            .map(block -> BlockView.of(block, photos.of(block.id()), now))
            .toList(),
        parts.stream().map(PartBevels::part).toList(),
        BevelView.of(parts),
        parts.stream()
            .filter(part -> part.problem() != null)
            .map(part -> part.part().partNumber() + ": " + part.problem())
            .toList());
  }

  private static BlocksOfSet lines(BlockSet set) {
    return new BlocksOfSet(
        set.code(),
        set.blocks().stream()
            .map(
                block ->
                    new BlockLine(
                        block.id(),
                        set.code(),
                        block.facts().kind(),
                        block.facts().formingStage(),
                        block.condition()))
            .toList());
  }

  private static String answer(BlocksOfSet blocks) {
    if (blocks.blocks().isEmpty()) {
      return "Nobody has recorded its blocks yet.";
    }
    return blocks.isReady()
        ? "Yes, every block recorded here is fit for work."
        : "No. " + String.join(" ", blocks.problems());
  }
}
