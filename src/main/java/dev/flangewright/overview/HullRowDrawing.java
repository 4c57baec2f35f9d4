package dev.flangewright.overview;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Band;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Draws a row of the hull on the paper.
 *
 * @param scale drawing units per mm
 * @param stretch by which the frames stand further apart than they need, to fill the paper
 * @param left end of the row
 * @param middleY of the hull's height
 */
record HullRowDrawing(HullRow row, double scale, double stretch, double left, double middleY) {

  private static final double ROOM_FOR_A_LETTER = 16;
  private static final double UNDER_THE_HULL = 36;

  void draw(Svg svg, SegmentLink link) {
    List<Double> places = row.places().stream().map(mm -> left + scale * stretch * mm).toList();
    longitudinals(svg, places);
    for (int i = 0; i < places.size(); i++) {
      frame(svg, row.frames().get(i), places.get(i), link);
    }
    codes(svg, places);
  }

  private Spot at(double place, Spot plan) {
    Spot seen = row.seen(plan);
    return new Spot(place + scale * seen.x(), middleY + scale * seen.y());
  }

  /** Crown, keel and both sides' greatest breadth, from frame to frame. */
  private void longitudinals(Svg svg, List<Double> places) {
    Comparator<Spot> up = Comparator.comparingDouble(Spot::y);
    Comparator<Spot> across = Comparator.comparingDouble(Spot::x);
    for (Comparator<Spot> end : List.of(up, up.reversed(), across, across.reversed())) {
      List<Spot> line = new ArrayList<>();
      for (int i = 0; i < places.size(); i++) {
        line.add(at(places.get(i), row.frames().get(i).spots().stream().max(end).orElseThrow()));
      }
      svg.path("d-hull", Lines.open(line));
    }
  }

  private void frame(Svg svg, HullFrame frame, double place, SegmentLink link) {
    svg.open("g").title(HullWords.said(frame));
    for (HullSegment segment : frame.drawn()) {
      link.draw(svg, segment, Band.between(onPaper(segment, place)));
    }
    svg.close();
  }

  private List<List<Spot>> onPaper(HullSegment segment, double place) {
    return segment.edges().stream()
        .map(edge -> edge.stream().map(spot -> at(place, spot)).toList())
        .toList();
  }

  /** Frame codes under the rings, as many as have room. */
  private void codes(Svg svg, List<Double> places) {
    int longest = row.frames().stream().mapToInt(f -> f.code().length()).max().orElse(1);
    double y = middleY + scale * row.heightMm() / 2 + UNDER_THE_HULL;
    double free = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      if (places.get(i) >= free) {
        svg.label(new Spot(places.get(i), y), Anchor.MIDDLE, row.frames().get(i).code());
        free = places.get(i) + longest * ROOM_FOR_A_LETTER + 8;
      }
    }
  }
}
