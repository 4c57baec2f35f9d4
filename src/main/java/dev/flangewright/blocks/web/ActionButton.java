package dev.flangewright.blocks.web;

import dev.flangewright.blocks.BlockAction;
import dev.flangewright.blocks.BlockCondition;
import dev.flangewright.people.SignedIn;
import java.util.Arrays;
import java.util.List;

/** A button that changes the condition of a block. */
record ActionButton(BlockAction action, String words) {

  /**
   * What whoever is signed in may do to a block in that condition.
   *
   * @param needsWhy those that want words, or those that do not
   */
  static List<ActionButton> on(BlockCondition condition, boolean needsWhy) {
    return Arrays.stream(BlockAction.values())
        .filter(action -> action.isOpenTo(condition) && action.needsWhy() == needsWhy)
        .filter(action -> SignedIn.may(action.permission()))
        .map(action -> new ActionButton(action, words(action)))
        .toList();
  }

  private static String words(BlockAction action) {
    return switch (action) {
      case MAKE_READY -> "Put it ready";
      case TAKE -> "Take it to the bench";
      case PUT_BACK -> "Put it back";
      case REPORT_DAMAGE -> "Report damage";
      case REPAIR -> "Record the repair";
      case SCRAP -> "Scrap this block";
    };
  }
}
