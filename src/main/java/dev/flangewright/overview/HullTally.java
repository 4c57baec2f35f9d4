package dev.flangewright.overview;

import dev.flangewright.bench.StageShare;
import dev.flangewright.forming.RiskLevel;
import dev.flangewright.overview.Overview.FrameProgress;
import dev.flangewright.overview.Overview.RiskCount;
import dev.flangewright.overview.Overview.StageProgress;
import dev.flangewright.parts.PartState;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Counts a build's parts, which stand in their order along the hull. */
record HullTally(List<HullPart> hull) {

  private static final int HARDEST = 12;
  private static final Set<PartState> DONE = EnumSet.of(PartState.ACCEPTED, PartState.CONCESSION);

  StateCounts states() {
    return states(hull);
  }

  List<FrameProgress> frames() {
    return hull.stream()
        .collect(
            Collectors.groupingBy(
                part -> part.part().frame(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(
            parts ->
                new FrameProgress(
                    parts.get(0).part().frame(),
                    parts.get(0).part().framePositionMm().value(),
                    states(parts)))
        .toList();
  }

  static List<StageProgress> stages(List<StageShare> stages, List<StageTally> tallies) {
    Map<String, StageTally> byCode =
        tallies.stream().collect(Collectors.toMap(StageTally::code, Function.identity()));
    return stages.stream()
        .map(
            stage -> {
              StageTally tally = byCode.getOrDefault(stage.code(), StageTally.none(stage.code()));
              return new StageProgress(
                  stage.code(),
                  stage.name(),
                  (int) tally.done(),
                  (int) tally.begun(),
                  (int) tally.held(),
                  stage.parts());
            })
        .toList();
  }

  List<RiskCount> risks() {
    return Arrays.stream(RiskLevel.values())
        .map(
            level -> {
              List<HullPart> at = hull.stream().filter(p -> p.part().riskLevel() == level).toList();
              return new RiskCount(
                  level, at.size(), (int) at.stream().filter(HullTally::isToCome).count());
            })
        .toList();
  }

  int withoutFigures() {
    return (int) hull.stream().filter(p -> p.part().riskLevel() == null).count();
  }

  List<HullPart> hardest() {
    return hull.stream()
        .filter(HullTally::isToCome)
        .filter(p -> p.part().riskUtilisation() != null)
        .sorted(
            Comparator.comparing((HullPart p) -> Objects.requireNonNull(p.part().riskUtilisation()))
                .reversed())
        .limit(HARDEST)
        .toList();
  }

  private static boolean isToCome(HullPart part) {
    return !DONE.contains(part.progress().state());
  }

  private static StateCounts states(List<HullPart> parts) {
    return StateCounts.of(parts.stream().map(p -> p.progress().state()).toList());
  }
}
