package dev.flangewright.blocks;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A line of the list of block sets.
 *
 * @param set null where parts name the code and nobody has recorded the set
 */
public record BlockSetLine(
    String code, @Nullable BlockSet set, BlocksOfSet blocks, List<PartOfSet> parts) {

  /** Whether there is a set with at least one block. */
  public boolean isRecorded() {
    return set != null && !blocks.blocks().isEmpty();
  }

  /** The name of its place on the shelf; empty where unknown. */
  public String place() {
    return set == null ? "" : Objects.requireNonNull(set).facts().place();
  }
}
