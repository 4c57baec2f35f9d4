package dev.flangewright.overview;

import dev.flangewright.drawing.Band;
import dev.flangewright.drawing.StateMark;
import dev.flangewright.drawing.Svg;

/**
 * A segment's mark as a link to its part.
 *
 * @param prefix stands before {@code /parts/{id}}
 * @param isStop whether the keyboard stops at it
 */
record SegmentLink(String prefix, boolean isStop) {

  void draw(Svg svg, HullSegment segment, Band band) {
    String address = prefix + "/parts/" + segment.partId();
    if (isStop) {
      svg.open("a", "href", address);
    } else {
      svg.open("a", "href", address, "tabindex", -1);
    }
    svg.title(segment.said());
    StateMark.draw(svg, band, segment.state(), segment.share());
    svg.close();
  }
}
