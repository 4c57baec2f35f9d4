package dev.flangewright.phones;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** What is to be logged on one piece, in its order; slips of the finger are taken back. */
final class Script {

  private static final int SLIP_ONE_IN = 3;

  private final List<Step> steps = new ArrayList<>();

  /**
   * One entry.
   *
   * @param stage the code of the stage that it is logged on
   */
  record Step(String action, String stage) {

    /** Where it is sent, below the address of its piece. */
    String address() {
      return switch (action) {
        case "UNDO" -> "/undo";
        default -> "/stages/" + stage + "/" + action.toLowerCase(Locale.ROOT);
      };
    }
  }

  private Script() {}

  /**
   * The first steps through these stages.
   *
   * @param held the one of them that is a hold point
   */
  static List<Step> of(List<String> stages, String held, int length, Random chance) {
    Script script = new Script();
    while (script.steps.size() < length) { // with few slips it may be too short at first
      script.steps.clear();
      stages.forEach(stage -> script.stage(stage, stage.equals(held), chance));
    }
    return script.steps.subList(0, length);
  }

  private void stage(String stage, boolean isHeld, Random chance) {
    perhapsTwice("START", stage, chance);
    if (isHeld) {
      perhapsTwice("CHECK", stage, chance);
    }
    perhapsTwice("FINISH", stage, chance);
  }

  private void perhapsTwice(String action, String stage, Random chance) {
    steps.add(new Step(action, stage));
    while (chance.nextInt(SLIP_ONE_IN) == 0) {
      steps.add(new Step("UNDO", stage));
      steps.add(new Step(action, stage));
    }
  }
}
