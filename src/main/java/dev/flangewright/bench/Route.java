package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The stages of a build in their order. Every verb leaves a route that a piece can go through to
 * its end: at least one stage of work, then exactly one inspection, then exactly one acceptance.
 */
public final class Route {

  private final long buildId;
  private final List<RouteStage> stages;

  Route(long buildId, List<RouteStage> inOrder) {
    this.buildId = buildId;
    this.stages = new ArrayList<>(inOrder);
  }

  /** Puts a stage of work in, last before the inspection. */
  RouteStage add(StagePlan plan) {
    String code = CodeOfName.of(plan.name(), "stage", this::hasCode);
    RouteStage stage =
        new RouteStage(
            buildId, 0, code, plan.name(), plan.kind(), plan.holdCheck(), plan.flangesNeeded());
    stages.add(plan.kind().byInspection() ? stages.size() : placeOfInspection(), stage);
    settle();
    return stage;
  }

  void change(long stageId, StagePlan plan) {
    stage(stageId).reads(plan.name(), plan.kind(), plan.holdCheck(), plan.flangesNeeded());
    settle();
  }

  /**
   * @param by −1 for one place earlier, 1 for one later
   */
  void move(long stageId, int by) {
    int from = stages.indexOf(stage(stageId));
    int to = from + by;
    if (to < 0 || to >= stages.size()) {
      throw Refused.conflict("The stage stands at the end of the route already.");
    }
    Collections.swap(stages, from, to);
    settle();
  }

  RouteStage remove(long stageId) {
    RouteStage stage = stage(stageId);
    stages.remove(stage);
    settle();
    return stage;
  }

  /** Changes with every change of the route, so that a page can say which route it showed. */
  public String seal() {
    return stages.stream()
        .map(stage -> stage.id() + "." + stage.version())
        .collect(Collectors.joining("-"));
  }

  public List<RouteStage> stages() {
    return Collections.unmodifiableList(stages);
  }

  private void settle() {
    refuseUnlessSound();
    for (int i = 0; i < stages.size(); i++) {
      stages.get(i).standsAt(i + 1);
    }
  }

  private void refuseUnlessSound() {
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

  private int placeOfInspection() {
    for (int i = 0; i < stages.size(); i++) {
      if (stages.get(i).kind() == StageKind.INSPECT) {
        return i;
      }
    }
    return stages.size();
  }

  private boolean hasCode(String code) {
    return stages.stream().anyMatch(stage -> stage.code().equals(code));
  }

  private RouteStage stage(long id) {
    return stages.stream()
        .filter(stage -> stage.id() == id)
        .findFirst()
        .orElseThrow(() -> Refused.unknown("stage", id));
  }
}
