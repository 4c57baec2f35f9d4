package dev.flangewright.overview;

import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Svg;
import java.util.ArrayList;
import java.util.List;

/**
 * The whole hull: every frame a ring, every segment at its true contour with the mark of its state,
 * each a link to its part. A long hull is laid out in rows, read like lines of text.
 */
public final class HullDrawing {

  private static final double PAPER_WIDTH = 960;
  private static final double MARGIN = 16;
  private static final double MOST_HEIGHT = 340;
  private static final double LETTERING = 56;
  private static final int MOST_IN_A_ROW = 16;

  /** More links than this are a burden to walk through by keyboard; the register lists them all. */
  private static final int MOST_STOPS = 400;

  private HullDrawing() {}

  /**
   * @param id unique on the page
   * @param linkPrefix stands before {@code /parts/{id}}: the context path, or empty
   * @return SVG for a page; empty when no segment has a contour
   */
  public static String of(String id, String linkPrefix, List<HullSegment> segments) {
    List<HullFrame> frames =
        HullFrame.of(segments).stream().filter(frame -> !frame.drawn().isEmpty()).toList();
    SegmentLink link = new SegmentLink(linkPrefix, segments.size() <= MOST_STOPS);
    return frames.isEmpty() ? "" : drawn(id, rows(frames), link, HullWords.said(segments));
  }

  private static List<HullRow> rows(List<HullFrame> frames) {
    Box hull = Box.around(frames.stream().flatMap(f -> f.spots().stream()).toList());
    int count = (frames.size() + MOST_IN_A_ROW - 1) / MOST_IN_A_ROW;
    int inRow = (frames.size() + count - 1) / count;
    List<HullRow> rows = new ArrayList<>();
    for (int from = 0; from < frames.size(); from += inRow) {
      rows.add(new HullRow(frames.subList(from, Math.min(frames.size(), from + inRow)), hull));
    }
    return rows;
  }

  private static String drawn(String id, List<HullRow> rows, SegmentLink link, String said) {
    double longest = rows.stream().mapToDouble(HullRow::lengthMm).max().orElse(1);
    double hullHeight = Math.max(1, rows.get(0).heightMm());
    double across = PAPER_WIDTH - 2 * MARGIN;
    double scale = Math.min(across / Math.max(1, longest), MOST_HEIGHT / hullHeight);
    double rowHeight = scale * hullHeight + 2 * MARGIN + LETTERING;
    double stretch = across / (scale * Math.max(1, longest));
    Box paper = Box.of(PAPER_WIDTH, rowHeight * rows.size());
    Svg svg = Svg.withLinks(id, "drawing full sheet-wide", paper, "The hull, frame by frame", said);
    for (int i = 0; i < rows.size(); i++) {
      double middle = rowHeight * i + MARGIN + scale * hullHeight / 2;
      new HullRowDrawing(rows.get(i), scale, stretch, MARGIN, middle).draw(svg, link);
    }
    return svg.written();
  }
}
