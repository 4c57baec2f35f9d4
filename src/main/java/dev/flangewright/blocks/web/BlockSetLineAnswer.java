package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.BlockSetLine;
import dev.flangewright.blocks.PartOfSet;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A line of the list of block sets. */
record BlockSetLineAnswer(
    @Schema(description = "Null where parts name the code and nobody has recorded the set.")
        @Nullable Long id,
    String code,
    String place,
    @Schema(description = "Whether a fit block of each recorded kind and stage is there.")
        boolean ready,
    @Schema(description = "How many blocks are in which condition.")
        Map<BlockCondition, Long> blocks,
    List<PartLink> parts) {

  /** A part formed on the set. */
  record PartLink(long id, String partNumber) {

    static PartLink of(PartOfSet part) {
      return new PartLink(part.id(), part.partNumber());
    }
  }

  static BlockSetLineAnswer of(BlockSetLine line) {
    BlockSet set = line.set();
    return new BlockSetLineAnswer(
        set == null ? null : set.id(),
        line.code(),
        line.place(),
        line.blocks().isReady(),
        line.blocks().counts(),
        line.parts().stream().map(PartLink::of).toList());
  }
}
