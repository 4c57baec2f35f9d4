package dev.flangewright.bench;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How complete a frame is, and where it stands.
 *
 * @param passed parts of it that are accepted, with a concession or without
 * @param place its place along the hull, from 0
 */
record FrameShare(String code, int parts, int passed, int place) {

  int left() {
    return parts - passed;
  }

  double share() {
    return (double) passed / parts;
  }

  /** The frames of a build by their code. */
  static Map<String, FrameShare> ofBuild(List<PartLine> parts, Map<Long, Attempts> attempts) {
    List<List<PartLine>> alongTheHull =
        parts.stream().collect(Collectors.groupingBy(PartLine::frame)).values().stream()
            .sorted(
                Comparator.comparingDouble((List<PartLine> on) -> on.get(0).frameAtMm().value())
                    .thenComparing(on -> on.get(0).frame()))
            .toList();
    Map<String, FrameShare> shares = new HashMap<>();
    for (int place = 0; place < alongTheHull.size(); place++) {
      List<PartLine> on = alongTheHull.get(place);
      String code = on.get(0).frame();
      int passed = (int) on.stream().filter(part -> isPassed(part, attempts)).count();
      shares.put(code, new FrameShare(code, on.size(), passed, place));
    }
    return shares;
  }

  private static boolean isPassed(PartLine part, Map<Long, Attempts> attempts) {
    return attempts.getOrDefault(part.id(), Attempts.NONE).passed().isPresent();
  }
}
