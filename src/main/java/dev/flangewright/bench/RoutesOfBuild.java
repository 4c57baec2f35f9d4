package dev.flangewright.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Says for every part of a build which route it takes, in three statements however large. */
@Service
public class RoutesOfBuild {

  private final BenchLines lines;
  private final Routes routes;
  private final RouteChoices choices;

  RoutesOfBuild(BenchLines lines, Routes routes, RouteChoices choices) {
    this.lines = lines;
    this.routes = routes;
    this.choices = choices;
  }

  /** By part. */
  @Transactional(readOnly = true)
  public Map<Long, BuildRoute> of(long buildId) {
    Map<String, Route> newest = newestReleased(buildId);
    Map<Long, String> ofParts = new HashMap<>();
    Map<PartNature, String> usual = new HashMap<>();
    for (RouteChoice choice : choices.findByBuildId(buildId)) {
      Optional.ofNullable(choice.partId()).ifPresent(id -> ofParts.put(id, choice.routeName()));
      Optional.ofNullable(choice.nature()).ifPresent(n -> usual.put(n, choice.routeName()));
    }
    Map<Long, BuildRoute> found = new LinkedHashMap<>();
    natures(buildId)
        .forEach(
            (part, rows) -> {
              PartNature nature = nature(rows);
              Optional<Route> own = Optional.ofNullable(newest.get(ofParts.get(part)));
              Optional<Route> route =
                  own.or(() -> Optional.ofNullable(newest.get(usual.get(nature))));
              found.put(part, new BuildRoute(part, nature, flanges(rows), route, own.isPresent()));
            });
    return found;
  }

  /** Every stage that parts of the build go through, in order, with how many parts that are. */
  @Transactional(readOnly = true)
  public List<StageShare> stages(long buildId) {
    MergedStages merged = new MergedStages();
    of(buildId).values().stream()
        .collect(
            Collectors.groupingBy(BuildRoute::stages, LinkedHashMap::new, Collectors.counting()))
        .entrySet()
        .stream()
        .sorted(Map.Entry.<List<RouteStage>, Long>comparingByValue().reversed())
        .forEach(group -> merged.add(group.getKey(), group.getValue().intValue()));
    return merged.stages();
  }

  private Map<String, Route> newestReleased(long buildId) {
    return routes.findByBuildIdOrderByNameAscNumberDesc(buildId).stream()
        .filter(route -> !route.isDraft())
        .collect(Collectors.toMap(Route::name, route -> route, (newer, older) -> newer));
  }

  private Map<Long, List<NatureLine>> natures(long buildId) {
    return lines.naturesOf(buildId).stream()
        .collect(
            Collectors.groupingBy(
                NatureLine::partId, LinkedHashMap::new, Collectors.toCollection(ArrayList::new)));
  }

  private static PartNature nature(List<NatureLine> rows) {
    return PartNature.of(
        rows.get(0).temper(),
        rows.stream().map(NatureLine::flange).filter(Objects::nonNull).toList());
  }

  private static int flanges(List<NatureLine> rows) {
    return (int) rows.stream().filter(row -> row.flange() != null).count();
  }
}
