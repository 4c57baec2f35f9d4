package dev.flangewright.overview;

import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.SegmentState;
import dev.flangewright.drawing.Spot;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A frame of the hull with its segments. */
record HullFrame(String code, double positionMm, List<HullSegment> segments) {

  /** The frames in the order in which they stand along the hull. */
  static List<HullFrame> of(List<HullSegment> segments) {
    Map<String, List<HullSegment>> byCode = new LinkedHashMap<>();
    segments.forEach(
        s ->
            byCode.merge(
                s.frameCode(),
                List.of(s),
                (a, b) -> Stream.concat(a.stream(), b.stream()).toList()));
    return byCode.entrySet().stream()
        .map(e -> new HullFrame(e.getKey(), e.getValue().get(0).framePositionMm(), e.getValue()))
        .sorted(Comparator.comparingDouble(HullFrame::positionMm).thenComparing(HullFrame::code))
        .toList();
  }

  List<HullSegment> drawn() {
    return segments.stream().filter(HullSegment::isDrawn).toList();
  }

  List<Spot> spots() {
    return segments.stream().flatMap(s -> s.edges().stream()).flatMap(List::stream).toList();
  }

  Box box() {
    return Box.around(spots());
  }

  long accepted() {
    return segments.stream()
        .map(HullSegment::state)
        .filter(s -> s == SegmentState.ACCEPTED || s == SegmentState.CONCESSION)
        .count();
  }
}
