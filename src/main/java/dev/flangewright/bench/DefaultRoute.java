package dev.flangewright.bench;

import dev.flangewright.parts.BuildMade;
import java.util.ArrayList;
import java.util.List;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Gives a new build the usual route of a two-flange segment (common practice, no source). */
@Component
class DefaultRoute {

  static final String EDGE_CHECK =
      "Both faces deburred, edge broken 0.1 to 0.4 mm and polished lengthwise, no nick or scratch"
          + " across it under a 10x glass";

  private final RouteStages stages;

  DefaultRoute(RouteStages stages) {
    this.stages = stages;
  }

  @EventListener
  void on(BuildMade made) {
    stages.saveAll(forBuild(made.buildId()));
  }

  static List<RouteStage> forBuild(long build) {
    List<RouteStage> route = new ArrayList<>();
    add(route, build, "lay-out-and-cut", "Lay out and cut", StageKind.CUT, 0);
    add(route, build, "tooling-holes", "Tooling holes", StageKind.DRILL, 0);
    add(route, build, "cutouts", "Cutouts", StageKind.PIERCE, 0);
    route.add(
        new RouteStage(
            build,
            route.size() + 1,
            "edges",
            "Edges deburred and polished",
            StageKind.EDGE,
            EDGE_CHECK,
            0));
    add(route, build, "first-flange", "First flange in passes", StageKind.FORM, 1);
    add(route, build, "trim-to-working-width", "Trim to working width", StageKind.TRIM, 1);
    add(route, build, "second-flange", "Second flange", StageKind.FORM, 2);
    add(route, build, "set-to-template", "Set to template", StageKind.SET, 0);
    add(route, build, "final-trim", "Final trim", StageKind.TRIM, 0);
    add(route, build, "inspect", "Inspect", StageKind.INSPECT, 0);
    add(route, build, "accepted", "Accepted", StageKind.ACCEPT, 0);
    return route;
  }

  private static void add(
      List<RouteStage> route, long build, String code, String name, StageKind kind, int flanges) {
    route.add(new RouteStage(build, route.size() + 1, code, name, kind, null, flanges));
  }
}
