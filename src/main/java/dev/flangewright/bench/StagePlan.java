package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import org.jspecify.annotations.Nullable;

/**
 * What the route editor says of one stage.
 *
 * @param holdCheck what must be checked before the stage can be passed; null if it is no hold point
 * @param flangesNeeded the stage is left out for parts with fewer flanges, 0 to 9
 */
public record StagePlan(
    String name, StageKind kind, @Nullable String holdCheck, int flangesNeeded) {

  private static final int MOST_FLANGES = 9;

  /**
   * @throws Refused if a text is too long or empty, the number out of range, or the inspection
   *     would be left out or held
   */
  public StagePlan {
    name = text("name", name, 1, 80);
    String check = text("holdCheck", holdCheck == null ? "" : holdCheck, 0, 300);
    holdCheck = check.isEmpty() ? null : check;
    if (flangesNeeded < 0 || flangesNeeded > MOST_FLANGES) {
      throw Refused.unacceptable("flangesNeeded must be from 0 to " + MOST_FLANGES + ".");
    }
    if (kind.byInspection() && (holdCheck != null || flangesNeeded > 0)) {
      throw Refused.unacceptable(
          "The inspection is itself the check, and no part goes without it: it takes neither a"
              + " hold check nor a number of flanges.");
    }
  }

  private static String text(String field, String value, int least, int most) {
    String clean = value.strip();
    if (clean.length() < least || clean.length() > most) {
      throw Refused.unacceptable(field + " needs " + least + " to " + most + " characters.");
    }
    return clean;
  }
}
