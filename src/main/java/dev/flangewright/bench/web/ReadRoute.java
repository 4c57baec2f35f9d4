package dev.flangewright.bench.web;

import dev.flangewright.bench.KeepRoutes;
import dev.flangewright.bench.Route;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Reads one version of a route for its page, in a transaction of its own: after a change is stored
 * or refused, so that the page shows what is true.
 */
@Component
class ReadRoute {

  private final KeepRoutes routes;

  ReadRoute(KeepRoutes routes) {
    this.routes = routes;
  }

  @Transactional(readOnly = true)
  RoutePage of(long routeId) {
    Route route = routes.version(routeId);
    return RoutePage.of(route, routes.ofBuild(route.buildId()));
  }
}
