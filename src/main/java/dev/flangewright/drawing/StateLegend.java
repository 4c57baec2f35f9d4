package dev.flangewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** The six marks of a segment's state, each with its word. */
public final class StateLegend {

  private static final double WIDTH = 640;
  private static final double ROW = 52;
  private static final int ACROSS = 3;
  private static final double SHARE = 0.45;

  private StateLegend() {}

  /**
   * @param id unique on the page
   * @return SVG for a page
   */
  public static String of(String id) {
    SegmentState[] states = SegmentState.values();
    int rows = (states.length + ACROSS - 1) / ACROSS;
    Box paper = Box.of(WIDTH, ROW * rows);
    Svg svg =
        Svg.picture(
            id,
            "drawing full column-wide",
            paper,
            "What the marks mean",
            "Dashed: not begun. Hatched from one end: in work. A bar across each end: held. "
                + "Solid: accepted. Solid with a tick: accepted by concession. "
                + "Two crossing strokes: scrapped.");
    for (int i = 0; i < states.length; i++) {
      double x = WIDTH / ACROSS * (i % ACROSS) + 8;
      int row = i / ACROSS;
      double y = ROW * row;
      StateMark.draw(svg, arc(x, y), states[i], SHARE);
      svg.label(new Spot(x + 76, y + 36), Anchor.START, states[i].word());
    }
    return svg.written();
  }

  /** A small segment: two arcs about one centre. */
  private static Band arc(double x, double y) {
    return Band.between(List.of(arc(x + 30, y + 72, 54), arc(x + 30, y + 72, 38)));
  }

  private static List<Spot> arc(double x, double y, double radius) {
    List<Spot> spots = new ArrayList<>();
    for (int degrees = -36; degrees <= 36; degrees += 6) {
      double angle = Math.toRadians(degrees);
      spots.add(new Spot(x + radius * Math.sin(angle), y - radius * Math.cos(angle)));
    }
    return spots;
  }
}
