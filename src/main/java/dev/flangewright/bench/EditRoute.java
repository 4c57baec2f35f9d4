package dev.flangewright.bench;

import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Changes the stages and checks of a draft. Every call says how many changes the page had shown,
 * and is refused if somebody has changed the draft since.
 */
@Service
@Transactional
@MayEditRegister
public class EditRoute {

  private final Routes routes;

  EditRoute(Routes routes) {
    this.routes = routes;
  }

  public void add(long routeId, int seen, StagePlan plan) {
    asSeen(routeId, seen).add(plan);
  }

  public void change(long routeId, int seen, long stageId, StagePlan plan) {
    asSeen(routeId, seen).change(stageId, plan);
  }

  public void move(long routeId, int seen, long stageId, Step step) {
    asSeen(routeId, seen).move(stageId, step.places());
  }

  public void remove(long routeId, int seen, long stageId) {
    asSeen(routeId, seen).remove(stageId);
  }

  public void ask(long routeId, int seen, long stageId, CheckCard check) {
    stage(routeId, seen, stageId).ask(check);
  }

  public void changeCheck(long routeId, int seen, long stageId, long checkId, CheckCard check) {
    stage(routeId, seen, stageId).changeCheck(checkId, check);
  }

  public void moveCheck(long routeId, int seen, long stageId, long checkId, Step step) {
    stage(routeId, seen, stageId).moveCheck(checkId, step.places());
  }

  public void removeCheck(long routeId, int seen, long stageId, long checkId) {
    stage(routeId, seen, stageId).removeCheck(checkId);
  }

  private RouteStage stage(long routeId, int seen, long stageId) {
    return asSeen(routeId, seen).stageToChange(stageId);
  }

  private Route asSeen(long routeId, int seen) {
    Route route = routes.findToChange(routeId).orElseThrow(() -> Refused.unknown("route", routeId));
    route.refuseIfStale(seen);
    return route;
  }
}
