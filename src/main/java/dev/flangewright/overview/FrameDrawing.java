package dev.flangewright.overview;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Band;
import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Svg;
import dev.flangewright.overview.Callouts.Callout;
import java.util.ArrayList;
import java.util.List;

/** One frame, seen square on, with its segments' states and part numbers on leader lines. */
public final class FrameDrawing {

  private static final double PAPER_WIDTH = 960;
  private static final double MARGIN_SIDE = 250;
  private static final double LETTERING_AT = 190;
  private static final double MARGIN = 30;
  private static final double MOST_HEIGHT = 560;
  private static final int MOST_CALLOUTS_BELOW = 8;

  private FrameDrawing() {}

  /**
   * @param id unique on the page
   * @param linkPrefix stands before {@code /parts/{id}}: the context path, or empty
   * @param segments of one frame
   * @return SVG for a page; empty when no segment has a contour
   * @throws IllegalArgumentException if the segments belong to more than one frame
   */
  public static String of(String id, String linkPrefix, List<HullSegment> segments) {
    List<HullFrame> frames = HullFrame.of(segments);
    if (frames.size() > 1) {
      throw new IllegalArgumentException("The segments of one frame, not of " + frames.size());
    }
    boolean isEmpty = frames.isEmpty() || frames.get(0).drawn().isEmpty();
    return isEmpty ? "" : drawn(id, new SegmentLink(linkPrefix, true), frames.get(0));
  }

  private static String drawn(String id, SegmentLink link, HullFrame frame) {
    Box field = field(frame);
    Fit fit = Fit.into(field, frame.box());
    Box paper = Box.of(PAPER_WIDTH, field.maxY() + MARGIN);
    String said = HullWords.said(frame.segments());
    Svg svg = Svg.withLinks(id, "drawing full sheet-wide", paper, HullWords.said(frame), said);
    List<Callout> left = new ArrayList<>();
    List<Callout> right = new ArrayList<>();
    for (HullSegment segment : frame.drawn()) {
      Band band = Band.between(segment.edges().stream().map(fit::all).toList());
      link.draw(svg, segment, band);
      Callout callout = Callout.of(segment, band);
      (callout.from().x() < PAPER_WIDTH / 2 ? left : right).add(callout);
    }
    new Callouts(left, LETTERING_AT, Anchor.END, paper.height()).draw(svg);
    new Callouts(right, PAPER_WIDTH - LETTERING_AT, Anchor.START, paper.height()).draw(svg);
    return svg.written();
  }

  /** As high as the frame's proportion or the part numbers beside it ask for. */
  private static Box field(HullFrame frame) {
    Box plan = frame.box();
    double across = PAPER_WIDTH - 2 * MARGIN_SIDE;
    double height = Math.min(MOST_HEIGHT, across * plan.height() / Math.max(1, plan.width()));
    int beside = Math.min(MOST_CALLOUTS_BELOW, (frame.drawn().size() + 1) / 2);
    double high = Math.max(height, Callouts.LINES * beside);
    return new Box(MARGIN_SIDE, MARGIN, PAPER_WIDTH - MARGIN_SIDE, MARGIN + high);
  }
}
