package dev.flangewright.bench;

import dev.flangewright.blocks.BlockReadiness;
import dev.flangewright.heat.FormingWindows;
import dev.flangewright.materials.MaterialLibrary;
import dev.flangewright.people.WhoIsCleared;
import dev.flangewright.stock.SheetOnHand;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
  private final BlockReadiness blocks;
  private final WhoIsCleared cleared;
  private final SheetOnHand sheets;
  private final MaterialLibrary library;
  private final FormingWindows windows;
  private final Clock clock;

  WhatNext(
      BenchLines lines,
      RoutesOfBuild routes,
      BlockReadiness blocks,
      WhoIsCleared cleared,
      SheetOnHand sheets,
      MaterialLibrary library,
      FormingWindows windows,
      Clock clock) {
    this.lines = lines;
    this.routes = routes;
    this.blocks = blocks;
    this.cleared = cleared;
    this.sheets = sheets;
    this.library = library;
    this.windows = windows;
    this.clock = clock;
  }

  /**
   * The jobs of a build that are not done, the first to be done first.
   *
   * @param limit at most so many jobs
   */
  @Transactional(readOnly = true)
  public List<NextJob> forBuild(long buildId, Hands who, int limit) {
    return all(buildId, who).stream().limit(limit).toList();
  }

  /** All of them; a job for every part that is not done. */
  @Transactional(readOnly = true)
  public List<NextJob> all(long buildId, Hands who) {
    Map<Long, BuildRoute> ofParts = routes.of(buildId);
    return new Ranking(
            lines.partsOf(buildId),
            lines.piecesOf(buildId),
            part -> Optional.ofNullable(ofParts.get(part)).flatMap(WhatNext::firstStage))
        .jobs(Asking.of(who, floor(buildId, ofParts)));
  }

  private ShopFloor floor(long buildId, Map<Long, BuildRoute> ofParts) {
    Instant now = clock.instant();
    Instant today = beginOfDay(now);
    Map<Long, ClosingWindow> closing = new HashMap<>();
    windows.ofBuild(buildId, now).forEach((piece, w) -> closing.put(piece, ClosingWindow.of(w)));
    return new ShopFloor(
        blocks.ofBuild(buildId),
        new SheetTable(sheets.ofBuild(buildId), library, ofParts)::lacking,
        closing,
        cleared.names(),
        lines.setUpsOf(buildId, today),
        lines.passedOnIn(buildId, today));
  }

  /** In the workshop's time: the machine's time zone. */
  private static Instant beginOfDay(Instant now) {
    return now.atZone(ZoneId.systemDefault()).truncatedTo(ChronoUnit.DAYS).toInstant();
  }

  private static Optional<StageCard> firstStage(BuildRoute route) {
    return route.stages().stream().findFirst().map(RouteStage::card);
  }
}
