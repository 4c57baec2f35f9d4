package dev.flangewright.blocks;

import java.util.Objects;

/**
 * A block set as somebody wrote it into a form, before it is checked.
 *
 * @param hand name of a {@link BlockHand}; empty where nobody has said
 */
public record BlockSetEntry(String code, String hand, String pinMm, String place, String note) {

  /** A field that was not sent at all counts as empty. */
  public BlockSetEntry {
    code = Objects.requireNonNullElse(code, "");
    hand = Objects.requireNonNullElse(hand, "");
    pinMm = Objects.requireNonNullElse(pinMm, "");
    place = Objects.requireNonNullElse(place, "");
    note = Objects.requireNonNullElse(note, "");
  }

  /** Nothing but the code by which parts name it. */
  public static BlockSetEntry named(String code) {
    return new BlockSetEntry(code, "", "", "", "");
  }

  /** A set as it stands in the record. */
  public static BlockSetEntry of(BlockSet set) {
    BlockSetFacts facts = set.facts();
    BlockHand hand = facts.hand();
    return new BlockSetEntry(
        set.code(), hand == null ? "" : hand.name(), facts.pinText(), facts.place(), facts.note());
  }
}
