package dev.flangewright.overview;

import dev.flangewright.bench.Hands;
import dev.flangewright.bench.NextJob;
import dev.flangewright.bench.WhatNext;
import dev.flangewright.parts.Build;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Clearance;
import dev.flangewright.people.Permission;
import dev.flangewright.people.Refused;
import java.time.Clock;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Reads the wall board, in a number of statements that grows neither with the build nor with its
 * log: it is asked for every few seconds.
 */
@Service
public class ReadWall {

  private static final int LINES = 3;

  /** Hands that form metal, neither the lead's nor a beginner's: the board is nobody's own list. */
  private static final Hands HANDS =
      new Hands(
          "", EnumSet.of(Permission.LOG_WORK, Permission.SCRAP), EnumSet.allOf(Clearance.class));

  private static final Set<NextJob.Kind> FORMING =
      EnumSet.of(NextJob.Kind.CARRY_ON, NextJob.Kind.BEGIN);

  private final Builds builds;
  private final WallLines lines;
  private final WhatNext whatNext;
  private final Clock clock;

  ReadWall(Builds builds, WallLines lines, WhatNext whatNext, Clock clock) {
    this.builds = builds;
    this.lines = lines;
    this.whatNext = whatNext;
    this.clock = clock;
  }

  /**
   * @throws Refused if there is no such build
   */
  @Transactional(readOnly = true)
  public Wall of(long buildId) {
    Build build = builds.findById(buildId).orElseThrow(() -> Refused.unknown("build", buildId));
    List<WallPiece> inWork = lines.inWork(buildId);
    List<FramePieces> frames = lines.partsOfFrames(buildId);
    Map<Long, Long> passed = byFrame(lines.passedOfFrames(buildId));
    return new Wall(
        buildId,
        build.name(),
        inWork.stream().filter(WallPiece::isOnTheBench).toList(),
        inWork.stream().filter(WallPiece::waits).sorted(LONGEST_FIRST).toList(),
        next(buildId, inWork),
        frames.size(),
        (int) frames.stream().filter(frame -> isDone(frame, passed)).count(),
        frames.stream().mapToLong(FramePieces::parts).sum(),
        passed.values().stream().mapToLong(Long::longValue).sum(),
        lines.lastLogged(buildId, Limit.of(LINES)),
        clock.instant());
  }

  private static final Comparator<WallPiece> LONGEST_FIRST =
      Comparator.comparing(WallPiece::since, Comparator.nullsLast(Comparator.naturalOrder()));

  private List<NextJob> next(long buildId, List<WallPiece> inWork) {
    Set<Long> begun =
        inWork.stream()
            .filter(WallPiece::isOnTheBench)
            .map(WallPiece::id)
            .collect(Collectors.toSet());
    return whatNext.all(buildId, HANDS).stream()
        .filter(job -> FORMING.contains(job.kind()))
        .filter(job -> job.pieceId() == null || !begun.contains(job.pieceId()))
        .limit(LINES)
        .toList();
  }

  private static boolean isDone(FramePieces frame, Map<Long, Long> passed) {
    return Objects.equals(passed.get(frame.frameId()), frame.parts());
  }

  private static Map<Long, Long> byFrame(List<FramePieces> counts) {
    return counts.stream().collect(Collectors.toMap(FramePieces::frameId, FramePieces::parts));
  }
}
