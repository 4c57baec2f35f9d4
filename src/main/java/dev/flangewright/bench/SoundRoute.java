package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import java.util.List;

/**
 * What makes a route one that a piece can go through to its end: at least one stage of work, then
 * exactly one inspection, then exactly one acceptance.
 */
final class SoundRoute {

  private SoundRoute() {}

  static void refuseUnlessSound(List<RouteStage> stages) {
    int last = stages.size() - 1;
    boolean sound =
        last >= 2
            && stages.get(last).kind() == StageKind.ACCEPT
            && stages.get(last - 1).kind() == StageKind.INSPECT
            && stages.subList(0, last - 1).stream().noneMatch(s -> s.kind().byInspection());
    if (!sound) {
      throw Refused.unacceptable(
          "A route needs at least one stage of work, and ends with exactly one inspection and"
              + " after it exactly one acceptance. Nothing was changed.");
    }
  }

  static int placeOfInspection(List<RouteStage> stages) {
    for (int i = 0; i < stages.size(); i++) {
      if (stages.get(i).kind() == StageKind.INSPECT) {
        return i;
      }
    }
    return stages.size();
  }
}
