package dev.flangewright.bench;

import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Shows and changes a build's route. Pieces already begun keep the copy they began with. Every
 * change names the route it was made on, by its {@link Route#seal}, and is refused if somebody has
 * changed the route since.
 */
@Service
@Transactional
public class KeepRoute {

  private final RouteStages stages;

  KeepRoute(RouteStages stages) {
    this.stages = stages;
  }

  @Transactional(readOnly = true)
  public Route of(long buildId) {
    return new Route(buildId, stages.findByBuildIdOrderBySeq(buildId));
  }

  @MayEditRegister
  public void add(long buildId, String seal, StagePlan plan) {
    stages.save(asSeen(buildId, seal).add(plan));
  }

  @MayEditRegister
  public void change(long buildId, String seal, long stageId, StagePlan plan) {
    asSeen(buildId, seal).change(stageId, plan);
  }

  @MayEditRegister
  public void moveEarlier(long buildId, String seal, long stageId) {
    asSeen(buildId, seal).move(stageId, -1);
  }

  @MayEditRegister
  public void moveLater(long buildId, String seal, long stageId) {
    asSeen(buildId, seal).move(stageId, 1);
  }

  @MayEditRegister
  public void remove(long buildId, String seal, long stageId) {
    stages.delete(asSeen(buildId, seal).remove(stageId));
  }

  private Route asSeen(long buildId, String seal) {
    if (stages.findBuildToChange(buildId).isEmpty()) {
      throw Refused.unknown("build", buildId);
    }
    Route route = of(buildId);
    if (!route.seal().equals(seal)) {
      throw Refused.conflict(
          "Somebody changed this route in the meantime. Nothing was stored; look at it again.");
    }
    return route;
  }
}
