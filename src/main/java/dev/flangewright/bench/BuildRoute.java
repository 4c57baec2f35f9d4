package dev.flangewright.bench;

import java.util.List;
import java.util.Optional;

/**
 * The route of one part, as lists of a whole build read it.
 *
 * @param route empty if no released route serves it
 */
public record BuildRoute(long partId, PartNature nature, int flanges, Optional<Route> route) {

  /** The stages that a new piece would go through. */
  public List<RouteStage> stages() {
    return route.map(taken -> taken.stagesFor(flanges)).orElse(List.of());
  }
}
