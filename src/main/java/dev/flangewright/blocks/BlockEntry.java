package dev.flangewright.blocks;

import java.util.Objects;

/**
 * A block as somebody wrote it into a form, before it is checked.
 *
 * @param kind name of a {@link BlockKind}
 * @param formingStage a whole number from 1; not read for a kind that serves every stage
 * @param condition name of the condition it is recorded in; not read where it is recorded already
 */
public record BlockEntry(
    String kind, String formingStage, String material, String place, String condition) {

  /** A form block that is still to make. */
  public static final BlockEntry EMPTY =
      new BlockEntry(BlockKind.FORM_BLOCK.name(), "1", "", "", BlockCondition.TO_MAKE.name());

  /** A field that was not sent at all counts as empty. */
  public BlockEntry {
    kind = Objects.requireNonNullElse(kind, "");
    formingStage = Objects.requireNonNullElse(formingStage, "");
    material = Objects.requireNonNullElse(material, "");
    place = Objects.requireNonNullElse(place, "");
    condition = Objects.requireNonNullElse(condition, "");
  }

  /** A block as it stands in the record. */
  public static BlockEntry of(Block block) {
    BlockFacts facts = block.facts();
    return new BlockEntry(
        facts.kind().name(),
        facts.formingStage() == 0 ? "" : String.valueOf(facts.formingStage()),
        facts.material(),
        facts.place(),
        block.condition().name());
  }
}
