package dev.flangewright.bench.web;

import dev.flangewright.bench.BuildRoute;
import dev.flangewright.bench.KeepRoutes;
import dev.flangewright.bench.PartNature;
import dev.flangewright.bench.Route;
import dev.flangewright.bench.RouteOf;
import dev.flangewright.bench.RoutesOfBuild;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the page of a build's routes shows. */
@Component
class RoutesPages {

  private final KeepRoutes keep;
  private final RoutesOfBuild ofBuild;
  private final RouteOf routeOf;

  RoutesPages(KeepRoutes keep, RoutesOfBuild ofBuild, RouteOf routeOf) {
    this.keep = keep;
    this.ofBuild = ofBuild;
    this.routeOf = routeOf;
  }

  @Transactional(readOnly = true)
  RoutesPage of(long buildId) {
    Collection<BuildRoute> parts = ofBuild.of(buildId).values();
    List<RoutesPage.OfRoute> named = new ArrayList<>();
    byName(buildId).values().forEach(versions -> named.add(RoutesPage.OfRoute.of(versions, parts)));
    return new RoutesPage(
        named,
        Arrays.stream(PartNature.values()).map(nature -> ofNature(buildId, nature, parts)).toList(),
        named.stream().filter(RoutesPage.OfRoute::released).map(RoutesPage.OfRoute::name).toList());
  }

  private Map<String, List<Route>> byName(long buildId) {
    return keep.ofBuild(buildId).stream()
        .collect(Collectors.groupingBy(Route::name, LinkedHashMap::new, Collectors.toList()));
  }

  private RoutesPage.OfNature ofNature(
      long buildId, PartNature nature, Collection<BuildRoute> parts) {
    long count = parts.stream().filter(part -> part.nature() == nature).count();
    String route = routeOf.usual(buildId, nature).map(Route::name).orElse("");
    return new RoutesPage.OfNature(nature.name(), nature.words(), count, route);
  }
}
