package dev.flangewright.bench.web;

import dev.flangewright.bench.KeepRoutes;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Routes over HTTP; they are changed on their pages. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Routes")
class RoutesApi {

  private final KeepRoutes routes;
  private final Builds builds;

  RoutesApi(KeepRoutes routes, Builds builds) {
    this.routes = routes;
    this.builds = builds;
  }

  @GetMapping("/builds/{id}/routes")
  @Transactional(readOnly = true)
  @Operation(summary = "List every version of every route of a build, the newest of a name first")
  List<RouteAnswer> ofBuild(@PathVariable long id) {
    if (!builds.existsById(id)) {
      throw Refused.unknown("build", id);
    }
    return routes.ofBuild(id).stream().map(RouteAnswer::of).toList();
  }

  @GetMapping("/routes/{id}")
  @Transactional(readOnly = true)
  @Operation(summary = "Read one version of a route")
  RouteAnswer route(@PathVariable long id) {
    return RouteAnswer.of(routes.version(id));
  }
}
