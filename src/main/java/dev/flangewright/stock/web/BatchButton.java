package dev.flangewright.stock.web;

import dev.flangewright.people.SignedIn;
import dev.flangewright.stock.BatchAction;
import dev.flangewright.stock.BatchCondition;
import java.util.Arrays;
import java.util.List;

/**
 * A button that changes the condition of a batch.
 *
 * @param asked what is to be said with it; empty if nothing is
 */
record BatchButton(BatchAction action, String words, String asked) {

  /**
   * What whoever is signed in may do to a batch in that condition.
   *
   * @param needsWords those that want words, or those that do not
   */
  static List<BatchButton> on(BatchCondition condition, boolean needsWords) {
    return Arrays.stream(BatchAction.values())
        .filter(action -> action.isOpenTo(condition) && action.needsWords() == needsWords)
        .filter(action -> action.isOpenTo(SignedIn::may))
        .map(BatchButton::of)
        .toList();
  }

  private static BatchButton of(BatchAction action) {
    return switch (action) {
      case RELEASE ->
          new BatchButton(
              action, "Release it", "Who checked the certificate against the sheet, and how");
      case HOLD_BACK -> new BatchButton(action, "Hold it back", "Why nothing may be cut from it");
      case TAKE_BACK ->
          new BatchButton(
              action, "Take it back to released", "Who checked it, and why it may be used");
      case USE_UP -> new BatchButton(action, "It is used up", "");
    };
  }
}
