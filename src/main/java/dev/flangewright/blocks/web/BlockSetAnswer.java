package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockHand;
import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.PartBevels;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A block set with its blocks, the parts formed on it, and their bevels. */
record BlockSetAnswer(
    long id,
    long buildId,
    String code,
    @Schema(description = "Null where not known.") @Nullable BlockHand hand,
    @Schema(description = "Diameter of the tool pins, mm; null where not known.")
        @Nullable Double pinMm,
    String place,
    String note,
    List<BlockAnswer> blocks,
    List<PartBevelsAnswer> parts,
    String caution) {

  private static final String CAUTION =
      "Block angles are shop estimates. Hand-formed flanges open more than they allow for: prove"
          + " the block on a trial piece.";

  static BlockSetAnswer of(BlockSet set, List<PartBevels> parts) {
    return new BlockSetAnswer(
        set.id(),
        set.build().id(),
        set.code(),
        set.facts().hand(),
        set.facts().pinMm(),
        set.facts().place(),
        set.facts().note(),
        set.blocks().stream().map(BlockAnswer::of).toList(),
        parts.stream().map(PartBevelsAnswer::of).toList(),
        CAUTION);
  }
}
