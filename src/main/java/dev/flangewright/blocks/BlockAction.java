package dev.flangewright.blocks;

import static dev.flangewright.blocks.BlockCondition.IN_USE;
import static dev.flangewright.blocks.BlockCondition.NEEDS_REPAIR;
import static dev.flangewright.blocks.BlockCondition.READY;
import static dev.flangewright.blocks.BlockCondition.SCRAPPED;
import static dev.flangewright.blocks.BlockCondition.TO_MAKE;

import dev.flangewright.people.Permission;
import dev.flangewright.people.Refused;
import java.util.Set;

/** What may happen to a block: from which conditions, into which, and by whom. */
public enum BlockAction {
  MAKE_READY("made ready", Set.of(TO_MAKE), READY, Permission.KEEP_BLOCKS, false),
  TAKE("taken", Set.of(READY), IN_USE, Permission.LOG_WORK, false),
  PUT_BACK("put back", Set.of(IN_USE), READY, Permission.LOG_WORK, false),
  /** Further damage to a block that waits for repair is reported too. */
  REPORT_DAMAGE(
      "reported damaged",
      Set.of(READY, IN_USE, NEEDS_REPAIR),
      NEEDS_REPAIR,
      Permission.LOG_WORK,
      true),
  REPAIR("repaired", Set.of(NEEDS_REPAIR), READY, Permission.KEEP_BLOCKS, true),
  SCRAP(
      "scrapped",
      Set.of(TO_MAKE, READY, IN_USE, NEEDS_REPAIR),
      SCRAPPED,
      Permission.KEEP_BLOCKS,
      true);

  private final String done;
  private final Set<BlockCondition> from;
  private final BlockCondition to;
  private final Permission permission;
  private final boolean needsWhy;

  BlockAction(
      String done,
      Set<BlockCondition> from,
      BlockCondition to,
      Permission permission,
      boolean needsWhy) {
    this.done = done;
    this.from = from;
    this.to = to;
    this.permission = permission;
    this.needsWhy = needsWhy;
  }

  /** Whether a block in that condition allows it. */
  public boolean isOpenTo(BlockCondition condition) {
    return from.contains(condition);
  }

  public Permission permission() {
    return permission;
  }

  /** Whether it is refused without words. */
  public boolean needsWhy() {
    return needsWhy;
  }

  /**
   * The condition of a block afterwards.
   *
   * @param name of the block, for the refusal
   * @throws Refused if the condition does not allow it, or the words are missing
   */
  BlockCondition of(BlockCondition condition, String name, Signed by) {
    if (!isOpenTo(condition)) {
      throw Refused.conflict(
          "The " + name + " cannot be " + done + ": it is " + inWords(condition) + ".");
    }
    if (needsWhy && by.why().isEmpty()) {
      throw Refused.unacceptable("why is missing: say in a few words what happened or was done.");
    }
    return to;
  }

  private static String inWords(BlockCondition condition) {
    return switch (condition) {
      case TO_MAKE -> "still to make";
      case NEEDS_REPAIR -> "waiting for repair";
      default -> condition.word();
    };
  }
}
