package dev.flangewright.blocks;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The blocks of one set, and whether work can go on with them. Scrapped ones are among them. */
public record BlocksOfSet(String code, List<BlockLine> blocks) {

  /**
   * Why nothing can be done on the block of that kind and stage.
   *
   * @param formingStage matters for form blocks alone
   * @return a sentence; empty where a fit block is there, and also where none of that kind and
   *     stage was ever recorded, since then nothing is known against it
   */
  public Optional<String> notReady(BlockKind kind, int formingStage) {
    List<BlockLine> meant =
        blocks.stream().filter(block -> block.isFor(kind, formingStage)).toList();
    if (meant.isEmpty() || meant.stream().anyMatch(block -> block.condition().isFit())) {
      return Optional.empty();
    }
    String name = kind.named(kind.isStaged() ? formingStage : 0);
    return meant.stream()
        .map(BlockLine::condition)
        .min(Comparator.comparing(BlocksOfSet::farFromReady))
        .map(nearest -> "The %s of %s %s.".formatted(name, code, sentence(nearest)));
  }

  /** Whether blocks are recorded and there is a fit one for each kind and stage among them. */
  public boolean isReady() {
    return !blocks.isEmpty()
        && blocks.stream().allMatch(b -> notReady(b.kind(), b.formingStage()).isEmpty());
  }

  /** Why the set is not ready, block by block in the order of kinds and stages. */
  public List<String> problems() {
    return blocks.stream()
        .sorted(Comparator.comparing(BlockLine::kind).thenComparing(BlockLine::formingStage))
        .flatMap(block -> notReady(block.kind(), block.formingStage()).stream())
        .distinct()
        .toList();
  }

  /** How many blocks are in which condition. */
  public Map<BlockCondition, Long> counts() {
    return blocks.stream()
        .collect(Collectors.groupingBy(BlockLine::condition, TreeMap::new, Collectors.counting()));
  }

  public boolean has(BlockCondition condition) {
    return blocks.stream().anyMatch(block -> block.condition() == condition);
  }

  private static int farFromReady(BlockCondition condition) {
    return switch (condition) {
      case READY, IN_USE -> 0;
      case NEEDS_REPAIR -> 1;
      case TO_MAKE -> 2;
      case SCRAPPED -> 3;
    };
  }

  private static String sentence(BlockCondition condition) {
    return switch (condition) {
      case READY, IN_USE -> "is ready";
      case NEEDS_REPAIR -> "needs repair";
      case TO_MAKE -> "is still to make";
      case SCRAPPED -> "was scrapped, and no other is recorded";
    };
  }
}
