package dev.flangewright.bench;

import dev.flangewright.people.Permission;
import java.util.List;
import java.util.function.Predicate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Answers "what needs forming next?" for a person, in three statements however large the build. */
@Service
public class WhatNext {

  private final BenchLines lines;
  private final RouteStages routes;

  WhatNext(BenchLines lines, RouteStages routes) {
    this.lines = lines;
    this.routes = routes;
  }

  /**
   * The jobs of a build that are not done, the first to be done first.
   *
   * @param may what the person may do: {@code SignedIn::may}, or a role's {@code
   *     permissions()::contains}
   * @param limit at most so many jobs
   */
  @Transactional(readOnly = true)
  public List<NextJob> forBuild(long buildId, Predicate<Permission> may, int limit) {
    return all(buildId, may).stream().limit(limit).toList();
  }

  /** All of them; a job for every part that is not done. */
  @Transactional(readOnly = true)
  public List<NextJob> all(long buildId, Predicate<Permission> may) {
    String firstStage =
        routes.findByBuildIdOrderBySeq(buildId).stream()
            .findFirst()
            .map(RouteStage::name)
            .orElse("");
    return new Ranking(lines.partsOf(buildId), lines.piecesOf(buildId), firstStage)
        .jobs(Hands.of(may));
  }
}
