package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;

/**
 * What the route editor says of one stage.
 *
 * @param flangesNeeded the stage is left out for parts with fewer flanges, 0 to 9
 */
public record StagePlan(StageCard card, int flangesNeeded) {

  private static final int MOST_FLANGES = 9;

  /**
   * @throws Refused if the number is out of range, or the inspection would be left out
   */
  public StagePlan {
    if (flangesNeeded < 0 || flangesNeeded > MOST_FLANGES) {
      throw Refused.unacceptable("flangesNeeded must be from 0 to " + MOST_FLANGES + ".");
    }
    if (card.kind().byInspection() && flangesNeeded > 0) {
      throw Refused.unacceptable("No part goes without its inspection: it needs no flanges.");
    }
  }

  /** A stage in strict order that anybody may do. */
  public StagePlan(String name, StageKind kind, @Nullable String holdCheck, int flangesNeeded) {
    this(new StageCard(name, kind, holdCheck, null, null, false, null, null), flangesNeeded);
  }
}
