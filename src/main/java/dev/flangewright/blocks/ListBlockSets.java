package dev.flangewright.blocks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lists the block sets of a build, in a number of statements that does not grow with it. */
@Service
public class ListBlockSets {

  private final BlockSets sets;
  private final Blocks blocks;

  ListBlockSets(BlockSets sets, Blocks blocks) {
    this.sets = sets;
    this.blocks = blocks;
  }

  /** Every set that is recorded or that a part names, by code. */
  @Transactional(readOnly = true)
  public List<BlockSetLine> of(long buildId) {
    Map<String, BlockSet> recorded = new HashMap<>();
    sets.findByBuildId(buildId).forEach(set -> recorded.put(set.code(), set));
    BlocksOfBuild blocksOf = BlocksOfBuild.of(blocks.ofBuild(buildId));
    Map<String, List<PartOfSet>> partsOf =
        sets.partsOfBuild(buildId).stream()
            .filter(part -> !part.setCode().isBlank())
            .collect(Collectors.groupingBy(PartOfSet::setCode));
    TreeSet<String> codes = new TreeSet<>(recorded.keySet());
    codes.addAll(partsOf.keySet());
    return codes.stream()
        .map(
            code ->
                new BlockSetLine(
                    code,
                    recorded.get(code),
                    blocksOf.of(code),
                    partsOf.getOrDefault(code, List.of())))
        .toList();
  }
}
