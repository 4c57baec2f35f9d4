package dev.flangewright.blocks;

import dev.flangewright.parts.Faults;
import dev.flangewright.parts.Written;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What an entry of a block set or a block must be. */
final class CheckBlocks {

  private static final double LEAST_PIN_MM = 1;
  private static final double LARGEST_PIN_MM = 50;
  private static final int MOST_STAGES = 9;
  private static final int LONGEST_NOTE = 2000;

  private CheckBlocks() {}

  static BlockSetFacts set(BlockSetEntry written, Faults faults) {
    if (written.note().length() > LONGEST_NOTE) {
      faults.add("note", written.note(), "it may have at most " + LONGEST_NOTE + " characters");
    }
    return new BlockSetFacts(
        hand(written.hand(), faults),
        pin(written.pinMm(), faults),
        faults.perhaps("place", written.place(), 120),
        written.note().strip());
  }

  static BlockFacts block(BlockEntry written, Faults faults) {
    Optional<BlockKind> kind = one(BlockKind.values(), Enum::name, written.kind());
    if (kind.isEmpty()) {
      faults.add("kind", written.kind(), "it must be one of the kinds on offer");
    }
    boolean staged = kind.orElse(BlockKind.FORM_BLOCK).isStaged();
    return new BlockFacts(
        kind.orElse(BlockKind.FORM_BLOCK),
        staged ? stage(written.formingStage(), faults) : 0,
        faults.perhaps("material", written.material(), 120),
        faults.perhaps("place", written.place(), 120));
  }

  /** A block is recorded as one to make or one that is there. */
  static BlockCondition condition(String written, Faults faults) {
    return one(BlockCondition.values(), Enum::name, written)
        .filter(found -> found == BlockCondition.TO_MAKE || found == BlockCondition.READY)
        .orElseGet(
            () -> {
              faults.add("condition", written, "it must be TO_MAKE or READY");
              return BlockCondition.TO_MAKE;
            });
  }

  private static @Nullable BlockHand hand(String written, Faults faults) {
    if (written.isEmpty()) {
      return null;
    }
    Optional<BlockHand> hand = one(BlockHand.values(), Enum::name, written);
    if (hand.isEmpty()) {
      faults.add("hand", written, "it must be left, right or reversible");
    }
    return hand.orElse(null);
  }

  private static @Nullable Double pin(String written, Faults faults) {
    if (written.isEmpty()) {
      return null;
    }
    try {
      double mm = new Written(written).value();
      if (mm >= LEAST_PIN_MM && mm <= LARGEST_PIN_MM) {
        return mm;
      }
    } catch (NumberFormatException unreadable) {
      // said below, with the range
    }
    faults.add("pin_mm", written, "it must be a number from 1 to 50, in mm, with a point as 6.35");
    return null;
  }

  private static int stage(String written, Faults faults) {
    if (written.matches("[1-" + MOST_STAGES + "]")) {
      return Integer.parseInt(written);
    }
    faults.add("forming_stage", written, "it must be a whole number from 1 to " + MOST_STAGES);
    return 1;
  }

  private static <T> Optional<T> one(T[] all, Function<T, String> name, String written) {
    return Arrays.stream(all).filter(each -> name.apply(each).equals(written)).findFirst();
  }
}
