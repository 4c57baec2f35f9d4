package dev.flangewright.overview;

import dev.flangewright.bench.RoutesOfBuild;
import dev.flangewright.bench.WhatNext;
import dev.flangewright.parts.Build;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Permission;
import dev.flangewright.people.Refused;
import dev.flangewright.quality.ScrapStatistics;
import java.util.function.Predicate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads how far a build is, in a number of statements that does not grow with it. */
@Service
public class ReadOverview {

  private static final int NEXT = 8;

  private final Builds builds;
  private final ReadHull readHull;
  private final RoutesOfBuild routes;
  private final StageTallies stages;
  private final ScrapStatistics scrap;
  private final WhatNext whatNext;

  ReadOverview(
      Builds builds,
      ReadHull readHull,
      RoutesOfBuild routes,
      StageTallies stages,
      ScrapStatistics scrap,
      WhatNext whatNext) {
    this.builds = builds;
    this.readHull = readHull;
    this.routes = routes;
    this.stages = stages;
    this.scrap = scrap;
    this.whatNext = whatNext;
  }

  /**
   * @param may what the reader may do, for what to form next: {@code SignedIn::may}
   * @throws Refused if there is no such build
   */
  @Transactional(readOnly = true)
  public Overview of(long buildId, Predicate<Permission> may) {
    Build build = builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId));
    HullTally tally = new HullTally(readHull.of(buildId));
    return new Overview(
        buildId,
        build.name(),
        tally.states(),
        HullTally.stages(routes.stages(buildId), stages.ofBuild(buildId)),
        tally.frames(),
        tally.risks(),
        tally.withoutFigures(),
        tally.hardest(),
        scrap.byCause(buildId),
        whatNext.forBuild(buildId, may, NEXT),
        tally.hull());
  }
}
