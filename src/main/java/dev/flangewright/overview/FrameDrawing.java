package dev.flangewright.overview;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Band;
import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.StateMark;
import dev.flangewright.drawing.Svg;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One frame, seen square on, with its segments' states and part numbers on leader lines. */
public final class FrameDrawing {

  private static final double PAPER_WIDTH = 960;
  private static final double MARGIN_SIDE = 250;
  private static final double MARGIN = 30;
  private static final double MOST_HEIGHT = 640;
  private static final double LINE = 76;
  private static final double SHELF = 14;

  private final String linkPrefix;
  private final HullFrame frame;
  private final Box paper;
  private final Fit fit;

  private FrameDrawing(String linkPrefix, HullFrame frame) {
    this.linkPrefix = linkPrefix;
    this.frame = frame;
    Box plan = frame.box();
    double across = PAPER_WIDTH - 2 * MARGIN_SIDE;
    double height = Math.min(MOST_HEIGHT, across * plan.height() / Math.max(1, plan.width()));
    double tall = Math.max(height, LINE * Math.min(8, (frame.drawn().size() + 1) / 2));
    this.paper = Box.of(PAPER_WIDTH, tall + 2 * MARGIN);
    this.fit =
        Fit.into(new Box(MARGIN_SIDE, MARGIN, PAPER_WIDTH - MARGIN_SIDE, tall + MARGIN), plan);
  }

  /**
   * @param id unique on the page
   * @param linkPrefix stands before {@code /parts/{id}}: the context path, or empty
   * @param segments of one frame
   * @return SVG for a page; empty when no segment has a contour
   */
  public static String of(String id, String linkPrefix, List<HullSegment> segments) {
    List<HullFrame> frames = HullFrame.of(segments);
    if (frames.size() > 1) {
      throw new IllegalArgumentException("The segments of one frame, not of " + frames.size());
    }
    return frames.isEmpty() || frames.get(0).drawn().isEmpty()
        ? ""
        : new FrameDrawing(linkPrefix, frames.get(0)).drawn(id);
  }

  private String drawn(String id) {
    Svg svg =
        Svg.withLinks(
            id,
            "drawing full sheet-wide",
            paper,
            HullWords.said(frame),
            HullWords.said(frame.segments()));
    List<Callout> left = new ArrayList<>();
    List<Callout> right = new ArrayList<>();
    for (HullSegment segment : frame.drawn()) {
      Band band = Band.between(segment.edges().stream().map(fit::all).toList());
      svg.open("a", "href", linkPrefix + "/parts/" + segment.partId());
      svg.title(segment.said());
      StateMark.draw(svg, band, segment.state(), segment.share());
      svg.close();
      Spot from = band.outerAt(0.5);
      (from.x() < PAPER_WIDTH / 2 ? left : right)
          .add(new Callout(segment, from, band.outwardAt(0.5)));
    }
    new Callouts(left, MARGIN_SIDE - 40, Anchor.END, paper).draw(svg);
    new Callouts(right, PAPER_WIDTH - MARGIN_SIDE + 40, Anchor.START, paper).draw(svg);
    return svg.written();
  }

  /** A part number's leader line begins here and leaves in a direction. */
  private record Callout(HullSegment segment, Spot from, Spot outward) {}

  /** The part numbers on one side, one under the other, as many as have room. */
  private record Callouts(List<Callout> list, double x, Anchor anchor, Box paper) {

    void draw(Svg svg) {
      List<Callout> ordered =
          list.stream().sorted(Comparator.comparingDouble(c -> c.from.y())).toList();
      int most = (int) (paper.height() / LINE);
      int every = Math.max(1, (ordered.size() + most - 1) / Math.max(1, most));
      double lowest = paper.height() - 34;
      double y = 0;
      int remaining = (ordered.size() - 1) / every;
      for (int i = 0; i < ordered.size(); i += every, remaining--) {
        double wanted = Math.max(y, ordered.get(i).from.y() - 10);
        double place = Math.max(24, Math.min(wanted, lowest - remaining * LINE));
        draw(svg, ordered.get(i), place);
        y = place + LINE;
      }
    }

    private void draw(Svg svg, Callout callout, double y) {
      double shelf = anchor == Anchor.END ? SHELF : -SHELF;
      Spot start = callout.from.moved(callout.outward, 12);
      svg.path(
          "d-leader",
          Lines.open(start, new Spot(x + 2 * shelf, y - 5), new Spot(x + shelf / 2, y - 5)));
      svg.label(new Spot(x, y), anchor, callout.segment.partNumber());
      svg.quiet(new Spot(x, y + 30), anchor, callout.segment.state().word());
    }
  }
}
