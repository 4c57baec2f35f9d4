package dev.flangewright.blocks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The blocks of a build by the code of their set, read in one statement. */
public record BlocksOfBuild(Map<String, BlocksOfSet> sets) {

  static BlocksOfBuild of(List<BlockLine> lines) {
    return new BlocksOfBuild(
        lines.stream()
            .collect(
                Collectors.groupingBy(
                    BlockLine::setCode,
                    Collectors.collectingAndThen(
                        Collectors.toList(),
                        blocks -> new BlocksOfSet(blocks.get(0).setCode(), blocks)))));
  }

  /** The blocks of a set; none where nobody has recorded any. */
  public BlocksOfSet of(String setCode) {
    return sets.getOrDefault(setCode, new BlocksOfSet(setCode, List.of()));
  }

  /**
   * As {@link BlockReadiness#notReady}, without asking the database again.
   *
   * @param setCode as the part names it; empty where it names none
   */
  public Optional<String> notReady(String setCode, BlockKind kind, int formingStage) {
    return of(setCode).notReady(kind, formingStage);
  }
}
