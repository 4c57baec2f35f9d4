package dev.flangewright.overview;

import dev.flangewright.bench.Hands;
import dev.flangewright.bench.RoutesOfBuild;
import dev.flangewright.bench.WhatNext;
import dev.flangewright.parts.Build;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import dev.flangewright.quality.ScrapStatistics;
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
   * @param who the reader, for what to form next
   * @throws Refused if there is no such build
   */
  @Transactional(readOnly = true)
  public Overview of(long buildId, Hands who) {
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
        whatNext.forBuild(buildId, who, NEXT),
        tally.hull());
  }
}
