package dev.flangewright.overview;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Band;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import java.util.Comparator;
import java.util.List;

/**
 * Part numbers with their states down one side of a frame, each on a leader line; as many as have
 * room.
 *
 * @param x where the lettering stands
 * @param height of the paper
 */
record Callouts(List<Callout> list, double x, Anchor anchor, double height) {

  /** Height of a part number with its state. */
  static final double LINES = 70;

  private static final double FIRST = 24;
  private static final double SECOND_LINE = 25;
  private static final double SHELF = 16;

  /** Off the middle, where the tick of a concession stands. */
  private static final double LEADER_AT = 0.42;

  /** A part number whose leader line begins at a segment. */
  record Callout(HullSegment segment, Spot from) {

    static Callout of(HullSegment segment, Band band) {
      return new Callout(segment, band.outerAt(LEADER_AT).moved(band.outwardAt(LEADER_AT), 2));
    }
  }

  void draw(Svg svg) {
    List<Callout> ordered =
        list.stream().sorted(Comparator.comparingDouble(c -> c.from.y())).toList();
    int most = (int) Math.max(1, height / LINES);
    int every = Math.max(1, (ordered.size() + most - 1) / most);
    int below = (ordered.size() - 1) / every;
    double lowest = height - SECOND_LINE - 8;
    double y = FIRST;
    for (int i = 0; i < ordered.size(); i += every, below--) {
      double place = Math.min(Math.max(y, ordered.get(i).from.y()), lowest - below * LINES);
      draw(svg, ordered.get(i), place);
      y = place + LINES;
    }
  }

  private void draw(Svg svg, Callout callout, double y) {
    double shelf = anchor == Anchor.END ? SHELF : -SHELF;
    Spot knee = new Spot(x + 2 * shelf, y - 5);
    svg.path("d-leader", Lines.open(callout.from, knee, new Spot(x + shelf / 2, y - 5)));
    svg.label(new Spot(x, y), anchor, callout.segment.partNumber());
    svg.quiet(new Spot(x, y + SECOND_LINE), anchor, callout.segment.state().word());
  }
}
