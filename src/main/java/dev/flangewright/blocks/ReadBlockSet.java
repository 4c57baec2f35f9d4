package dev.flangewright.blocks;

import dev.flangewright.parts.FigurePart;
import dev.flangewright.people.Refused;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads one block set, with what its blocks have to be cut to. */
@Service
public class ReadBlockSet {

  private final BlockSets sets;
  private final FigurePart figure;

  ReadBlockSet(BlockSets sets, FigurePart figure) {
    this.sets = sets;
    this.figure = figure;
  }

  /** Needs the caller's transaction to read on, into the logs of its blocks for instance. */
  @Transactional(readOnly = true)
  public BlockSet of(long id) {
    return sets.findWholeById(id).orElseThrow(() -> Refused.unknown("block set", id));
  }

  /** The parts that name the set, by part number, each with the bevels of its flanges. */
  @Transactional(readOnly = true)
  public List<PartBevels> bevels(BlockSet set) {
    return sets.partsOf(set.build().id(), set.code()).stream()
        .map(part -> PartBevels.of(part, figure))
        .toList();
  }
}
