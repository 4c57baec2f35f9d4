package dev.flangewright.bench;

import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Shows a build's routes, drafts new versions of them and releases those. */
@Service
@Transactional
public class KeepRoutes {

  private final Routes routes;
  private final Clock clock;

  KeepRoutes(Routes routes, Clock clock) {
    this.routes = routes;
    this.clock = clock;
  }

  /** Every version of every route, by name, the newest of a name first. */
  @Transactional(readOnly = true)
  public List<Route> ofBuild(long buildId) {
    return routes.findByBuildIdOrderByNameAscNumberDesc(buildId);
  }

  /**
   * One version.
   *
   * @throws Refused if there is no such route
   */
  @Transactional(readOnly = true)
  public Route version(long routeId) {
    return routes.findById(routeId).orElseThrow(() -> Refused.unknown("route", routeId));
  }

  /** Drafts a route of a new name with the stages of another. */
  @MayEditRegister
  public Route draftNew(long buildId, String name, long basedOnId) {
    lock(buildId);
    Route from = version(basedOnId);
    String clean = Texts.of("name", name, 1, 60);
    if (from.buildId() != buildId) {
      throw Refused.unknown("route of this build", basedOnId);
    }
    if (from.isDraft()) {
      throw Refused.conflict(
          from.label() + " is a draft. Release it before another is made of it.");
    }
    if (routes.existsByBuildIdAndName(buildId, clean)) {
      throw Refused.conflict("There is already a route named \"" + clean + "\".");
    }
    return routes.save(from.draft(clean, 1, signed()));
  }

  /** Drafts the next version of a route; the draft that there is already, if there is one. */
  @MayEditRegister
  public Route draftNext(long routeId) {
    Route from = version(routeId);
    lock(from.buildId());
    int newest = routes.highestNumber(from.buildId(), from.name()).orElse(from.number());
    return ofBuild(from.buildId()).stream()
        .filter(route -> route.isDraft() && route.name().equals(from.name()))
        .findFirst()
        .orElseGet(() -> routes.save(from.draft(from.name(), newest + 1, signed())));
  }

  /** Makes a draft the version that pieces begin on from now on. */
  @MayEditRegister
  public void release(long routeId, int seen) {
    Route route = asSeen(routeId, seen);
    route.release();
  }

  /** Throws a draft away. */
  @MayEditRegister
  public Route discard(long routeId, int seen) {
    Route route = asSeen(routeId, seen);
    route.refuseUnlessDraft();
    routes.delete(route);
    return route;
  }

  private Route asSeen(long routeId, int seen) {
    Route route = routes.findToChange(routeId).orElseThrow(() -> Refused.unknown("route", routeId));
    route.refuseIfStale(seen);
    return route;
  }

  private void lock(long buildId) {
    if (routes.findBuildToChange(buildId).isEmpty()) {
      throw Refused.unknown("build", buildId);
    }
  }

  private Signature signed() {
    return new Signature(SignedIn.name(), clock.instant(), "");
  }
}
