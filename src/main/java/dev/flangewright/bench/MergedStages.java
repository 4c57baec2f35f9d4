package dev.flangewright.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * The stages of several routes in one order: a stage that only a later route has stands behind the
 * stage that it follows there. A stage is known by its code.
 */
final class MergedStages {

  private final List<StageShare> stages = new ArrayList<>();

  /** Adds the stages that so many parts go through. */
  void add(List<RouteStage> route, int parts) {
    int place = 0;
    for (RouteStage stage : route) {
      int known = placeOf(stage.code());
      if (known < 0) {
        stages.add(place, new StageShare(stage.code(), stage.name(), parts));
        place++;
      } else {
        StageShare share = stages.get(known);
        stages.set(known, new StageShare(share.code(), share.name(), share.parts() + parts));
        place = known + 1;
      }
    }
  }

  private int placeOf(String code) {
    for (int i = 0; i < stages.size(); i++) {
      if (stages.get(i).code().equals(code)) {
        return i;
      }
    }
    return -1;
  }

  List<StageShare> stages() {
    return List.copyOf(stages);
  }
}
