package dev.flangewright.bench.web;

import dev.flangewright.bench.BuildRoute;
import dev.flangewright.bench.Route;
import dev.flangewright.bench.RouteStage;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The routes of a build and which parts take which.
 *
 * @param choices the names that parts can be given
 */
record RoutesPage(List<OfRoute> routes, List<OfNature> natures, List<String> choices) {

  /**
   * A route by its name.
   *
   * @param id the version to be looked at: the newest released one, or the draft
   * @param draftId of the draft of its next version; 0 if there is none
   */
  record OfRoute(
      String name,
      long id,
      boolean released,
      String version,
      long draftId,
      long parts,
      String stages) {

    static OfRoute of(List<Route> newestFirst, Collection<BuildRoute> parts) {
      Optional<Route> released = newestFirst.stream().filter(r -> !r.isDraft()).findFirst();
      Route shown = released.orElse(newestFirst.get(0));
      return new OfRoute(
          shown.name(),
          shown.id(),
          released.isPresent(),
          "version " + shown.number() + ", " + shown.state().word(),
          newestFirst.stream().filter(Route::isDraft).map(Route::id).findFirst().orElse(0L),
          parts.stream().filter(part -> part.route().filter(shown::equals).isPresent()).count(),
          shown.stages().stream().map(RouteStage::name).collect(Collectors.joining(" → ")));
    }
  }

  /** The parts of a nature, and the route they usually take. */
  record OfNature(String nature, String words, long parts, String route) {}
}
