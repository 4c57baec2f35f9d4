package dev.flangewright.overview;

import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.SegmentState;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The drawing of the hull in words. */
final class HullWords {

  private HullWords() {}

  /** How many segments are in which state, and how many are not drawn. */
  static String said(List<HullSegment> segments) {
    List<String> parts = new ArrayList<>();
    for (SegmentState state : SegmentState.values()) {
      long count = segments.stream().filter(s -> s.state() == state).count();
      if (count > 0) {
        parts.add(count + " " + state.word().toLowerCase(Locale.ROOT));
      }
    }
    long missing = segments.stream().filter(s -> !s.isDrawn()).count();
    String drawn = "%d segments: %s.".formatted(segments.size(), String.join(", ", parts));
    return missing == 0 ? drawn : drawn + " Without a contour, so not drawn: " + missing + ".";
  }

  static String said(HullFrame frame) {
    return "Frame %s at %s mm: %d of %d segments accepted"
        .formatted(
            frame.code(),
            Numbers.figure(frame.positionMm(), 0),
            frame.accepted(),
            frame.segments().size());
  }
}
