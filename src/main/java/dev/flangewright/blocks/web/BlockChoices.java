package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockHand;
import dev.flangewright.blocks.BlockKind;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the forms of blocks offer to choose from: value to words, in order of showing. */
final class BlockChoices {

  private BlockChoices() {}

  static Map<String, String> hands() {
    Map<String, String> hands = new LinkedHashMap<>();
    hands.put("", "not known");
    Arrays.stream(BlockHand.values()).forEach(hand -> hands.put(hand.name(), hand.word()));
    return hands;
  }

  static Map<String, String> kinds() {
    Map<String, String> kinds = new LinkedHashMap<>();
    Arrays.stream(BlockKind.values()).forEach(kind -> kinds.put(kind.name(), kind.word()));
    return kinds;
  }

  /** A block is recorded as one to make or one that is there. */
  static Map<String, String> conditions() {
    Map<String, String> conditions = new LinkedHashMap<>();
    conditions.put(BlockCondition.TO_MAKE.name(), BlockCondition.TO_MAKE.word());
    conditions.put(BlockCondition.READY.name(), BlockCondition.READY.word());
    return conditions;
  }
}
