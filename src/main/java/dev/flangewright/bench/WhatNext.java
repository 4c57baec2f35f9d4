package dev.flangewright.bench;

import dev.flangewright.people.Permission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Answers "what needs forming next?" for a person, in a number of statements that does not grow
 * with the build.
 */
@Service
public class WhatNext {

  private final BenchLines lines;
  private final RoutesOfBuild routes;

  WhatNext(BenchLines lines, RoutesOfBuild routes) {
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
    Map<Long, BuildRoute> ofParts = routes.of(buildId);
    return new Ranking(
            lines.partsOf(buildId),
            lines.piecesOf(buildId),
            part -> Optional.ofNullable(ofParts.get(part)).map(WhatNext::firstStage).orElse(""))
        .jobs(Hands.of(may));
  }

  private static String firstStage(BuildRoute route) {
    return route.stages().stream().findFirst().map(RouteStage::name).orElse("");
  }
}
