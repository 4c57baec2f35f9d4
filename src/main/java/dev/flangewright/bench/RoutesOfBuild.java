package dev.flangewright.bench;

import dev.flangewright.forming.FlangeKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
    RouteTable table =
        new RouteTable(
            routes.findByBuildIdOrderByNameAscNumberDesc(buildId), choices.findByBuildId(buildId));
    Map<Long, BuildRoute> found = new LinkedHashMap<>();
    rowsByPart(buildId).forEach((part, rows) -> found.put(part, route(part, rows, table)));
    return found;
  }

  private static BuildRoute route(long part, List<NatureLine> rows, RouteTable table) {
    List<FlangeKind> flanges =
        rows.stream().map(NatureLine::flange).filter(Objects::nonNull).toList();
    PartNature nature = PartNature.of(rows.get(0).temper(), flanges);
    return new BuildRoute(part, nature, flanges.size(), table.of(part, nature));
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

  private Map<Long, List<NatureLine>> rowsByPart(long buildId) {
    return lines.naturesOf(buildId).stream()
        .collect(
            Collectors.groupingBy(NatureLine::partId, LinkedHashMap::new, Collectors.toList()));
  }
}
