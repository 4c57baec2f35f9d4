package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.blocks.BlockSetLine;

/** Which block sets the list shows. */
enum SetFilter {
  ALL("every set"),
  READY("ready for work"),
  TO_MAKE("with a block to make"),
  IN_USE("with a block in use"),
  NEEDS_REPAIR("with a block that needs repair"),
  SCRAPPED("with a scrapped block"),
  NOT_RECORDED("not recorded yet");

  private final String words;

  SetFilter(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  boolean takes(BlockSetLine line) {
    return switch (this) {
      case ALL -> true;
      case READY -> line.blocks().isReady();
      case TO_MAKE -> line.blocks().has(BlockCondition.TO_MAKE);
      case IN_USE -> line.blocks().has(BlockCondition.IN_USE);
      case NEEDS_REPAIR -> line.blocks().has(BlockCondition.NEEDS_REPAIR);
      case SCRAPPED -> line.blocks().has(BlockCondition.SCRAPPED);
      case NOT_RECORDED -> !line.isRecorded();
    };
  }
}
