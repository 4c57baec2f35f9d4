package dev.flangewright.drawing;

/**
 * Draws a segment's state on its own outline, so that it is read without colour: dashed = not
 * begun, hatched from one end = in work, solid = accepted, a bar across each end = held, a tick on
 * the outer side = concession, two crossing strokes = scrapped.
 */
public final class StateMark {

  /** Bars stand in from the ends, so that one at a joint is not taken for the neighbour's. */
  private static final double BAR_IN_FROM_END = 0.07;

  private static final double OVER_THE_EDGE = 2.5;
  private static final double OFF_THE_EDGE = 9;
  private static final double SMALLEST_STROKE = 5;

  private StateMark() {}

  /**
   * @param share done so far, 0 to 1; matters only for a segment in work
   */
  public static void draw(Svg svg, Band band, SegmentState state, double share) {
    svg.open("g", "class", state.cssClass());
    svg.path(band.isOpen() ? "d-segment d-edge" : "d-segment", band.outline());
    switch (state) {
      case IN_WORK -> partDone(svg, band, Math.min(1, Math.max(0, share)));
      case HELD -> bars(svg, band);
      case CONCESSION -> tick(svg, band);
      case SCRAPPED -> cross(svg, band);
      case NOT_BEGUN, ACCEPTED -> {}
    }
    svg.close();
  }

  private static void partDone(Svg svg, Band band, double share) {
    if (share == 0) {
      return;
    }
    svg.path(band.isOpen() ? "d-done d-edge" : "d-done", band.upTo(share));
    svg.path("d-so-far", across(band, share, 0));
  }

  private static void bars(Svg svg, Band band) {
    svg.path(
        "d-stop",
        across(band, BAR_IN_FROM_END, OVER_THE_EDGE)
            + across(band, 1 - BAR_IN_FROM_END, OVER_THE_EDGE));
  }

  private static String across(Band band, double share, double over) {
    Spot outward = band.outwardAt(share);
    double half = band.isOpen() ? SMALLEST_STROKE : 0;
    return Lines.open(
        band.outerAt(share).moved(outward, over + half),
        band.innerAt(share).moved(outward, -over - half));
  }

  /** Upright wherever it stands, so that it is read as a tick. */
  private static void tick(Svg svg, Band band) {
    Spot at = band.outerAt(0.5).moved(band.outwardAt(0.5), OFF_THE_EDGE);
    svg.path(
        "d-tick",
        Lines.open(
            new Spot(at.x() - 5, at.y()),
            new Spot(at.x() - 1.5, at.y() + 4),
            new Spot(at.x() + 5, at.y() - 5)));
  }

  private static void cross(Svg svg, Band band) {
    double half = Math.max(SMALLEST_STROKE, 0.75 * band.breadthAt(0.5));
    Spot middle = band.middleAt(0.5);
    Spot along = band.alongAt(0.5);
    Spot out = band.outwardAt(0.5);
    Spot ahead = middle.moved(along, half);
    Spot behind = middle.moved(along, -half);
    svg.path(
        "d-cross",
        Lines.open(behind.moved(out, -half), ahead.moved(out, half))
            + Lines.open(behind.moved(out, half), ahead.moved(out, -half)));
  }
}
