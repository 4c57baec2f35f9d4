package dev.flangewright.bench;

import dev.flangewright.parts.Part;
import dev.flangewright.people.Refused;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds the route that a part takes: the one chosen for it, or the usual one of its nature. */
@Service
public class RouteOf {

  private final Routes routes;
  private final RouteChoices choices;

  RouteOf(Routes routes, RouteChoices choices) {
    this.routes = routes;
    this.choices = choices;
  }

  /**
   * The newest released version; the pieces of the part that are in work may be on an older one.
   *
   * @throws Refused if no such version exists
   */
  @Transactional(readOnly = true)
  public Route part(Part part) {
    return choices
        .findByPartId(part.id())
        .map(RouteChoice::routeName)
        .flatMap(name -> released(part.build().id(), name))
        .or(() -> usual(part.build().id(), PartNature.of(part)))
        .orElseThrow(
            () ->
                Refused.conflict(
                    "There is no released route for "
                        + part.partNumber()
                        + ". The lead or the manager chooses one under Routes."));
  }

  /** The newest released version of the usual route for parts of a nature. */
  @Transactional(readOnly = true)
  public Optional<Route> usual(long buildId, PartNature nature) {
    return choices
        .findByBuildIdAndNature(buildId, nature)
        .map(RouteChoice::routeName)
        .flatMap(name -> released(buildId, name));
  }

  private Optional<Route> released(long buildId, String name) {
    return routes.findFirstByBuildIdAndNameAndStateOrderByNumberDesc(
        buildId, name, RouteState.RELEASED);
  }
}
