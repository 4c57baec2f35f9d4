package dev.flangewright.overview;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Band;
import dev.flangewright.drawing.Box;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.StateMark;
import dev.flangewright.drawing.Svg;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The whole hull: every frame a ring, every segment at its true contour with the mark of its state,
 * each a link to its part. A long hull is laid out in rows, read like lines of text.
 */
public final class HullDrawing {

  private static final double PAPER_WIDTH = 960;
  private static final double MARGIN = 16;
  private static final double MOST_HEIGHT = 340;
  private static final double LETTERING = 70;
  private static final int MOST_IN_A_ROW = 16;
  private static final double ROOM_FOR_A_LETTER = 17;

  /** Breadth of a ring over the distance between rings; more and they hide each other. */
  private static final double OVERLAP = 1.25;

  /** More links than this are a burden to walk through by keyboard; the register lists them all. */
  private static final int MOST_STOPS = 400;

  private final String linkPrefix;
  private final List<HullFrame> frames;
  private final int segments;

  private HullDrawing(String linkPrefix, List<HullSegment> segments) {
    this.linkPrefix = linkPrefix;
    this.frames =
        HullFrame.of(segments).stream().filter(frame -> !frame.drawn().isEmpty()).toList();
    this.segments = segments.size();
  }

  /**
   * @param id unique on the page
   * @param linkPrefix stands before {@code /parts/{id}}: the context path, or empty
   * @return SVG for a page; empty when no segment has a contour
   */
  public static String of(String id, String linkPrefix, List<HullSegment> segments) {
    HullDrawing hull = new HullDrawing(linkPrefix, segments);
    return hull.frames.isEmpty() ? "" : hull.drawn(id, segments);
  }

  private String drawn(String id, List<HullSegment> all) {
    List<HullRow> rows = rows();
    double height = rows.get(rows.size() - 1).middleY() + rowHeight(rows.get(0)) / 2;
    Svg svg =
        Svg.withLinks(
            id,
            "drawing full sheet-wide",
            Box.of(PAPER_WIDTH, height),
            "The hull, frame by frame",
            HullWords.said(all));
    rows.forEach(row -> draw(svg, row));
    return svg.written();
  }

  private List<HullRow> rows() {
    int count = (frames.size() + MOST_IN_A_ROW - 1) / MOST_IN_A_ROW;
    int inRow = (frames.size() + count - 1) / count;
    Box hull = Box.around(frames.stream().flatMap(f -> f.spots().stream()).toList());
    double scale = scale(hull, inRow);
    double half = scale * HullRow.SHORTENED * hull.width() / 2 + MARGIN;
    double rowHeight = HullRow.height(hull, scale) + LETTERING;
    List<HullRow> rows = new ArrayList<>();
    for (int from = 0; from < frames.size(); from += inRow) {
      List<HullFrame> some = frames.subList(from, Math.min(frames.size(), from + inRow));
      double right = half + (PAPER_WIDTH - 2 * half) * (some.size() - 1) / Math.max(1, inRow - 1);
      double middle = rowHeight * rows.size() + MARGIN + (rowHeight - LETTERING) / 2;
      rows.add(new HullRow(some, hull, half, some.size() == 1 ? half : right, middle, scale));
    }
    return rows;
  }

  private static double scale(Box hull, int inRow) {
    double breadth = HullRow.SHORTENED * Math.max(1, hull.width());
    double rings = (inRow - 1) / OVERLAP + 1;
    double across = (PAPER_WIDTH - 2 * MARGIN) / rings / breadth;
    return Math.min(across, MOST_HEIGHT / HullRow.height(hull, 1));
  }

  private double rowHeight(HullRow row) {
    return HullRow.height(row.hull(), row.scale()) + 2 * LETTERING;
  }

  private void draw(Svg svg, HullRow row) {
    List<Double> places = row.places();
    longitudinals(svg, row, places);
    for (int i = row.frames().size() - 1; i >= 0; i--) {
      frame(svg, row, row.frames().get(i), places.get(i));
    }
    codes(svg, row, places);
  }

  /** Crown, keel and greatest breadth from frame to frame. */
  private void longitudinals(Svg svg, HullRow row, List<Double> places) {
    List<Comparator<Spot>> ends =
        List.of(Comparator.comparingDouble(Spot::y), Comparator.comparingDouble(Spot::x));
    for (Comparator<Spot> end : ends) {
      for (Comparator<Spot> either : List.of(end, end.reversed())) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
          Spot extreme = row.frames().get(i).spots().stream().max(either).orElseThrow();
          line.add(row.at(places.get(i), extreme));
        }
        svg.path("d-hull", Lines.open(line));
      }
    }
  }

  private void frame(Svg svg, HullRow row, HullFrame frame, double place) {
    svg.open("g");
    svg.title(HullWords.said(frame));
    for (HullSegment segment : frame.drawn()) {
      Band band = Band.between(segment.edges().stream().map(edge -> row.all(place, edge)).toList());
      link(svg, segment);
      StateMark.draw(svg, band, segment.state(), segment.share());
      svg.close();
    }
    svg.close();
  }

  private void link(Svg svg, HullSegment segment) {
    String address = linkPrefix + "/parts/" + segment.partId();
    if (segments > MOST_STOPS) {
      svg.open("a", "href", address, "tabindex", -1);
    } else {
      svg.open("a", "href", address);
    }
    svg.title(segment.said());
  }

  /** Frame codes under the rings, as many as have room. */
  private void codes(Svg svg, HullRow row, List<Double> places) {
    int longest = row.frames().stream().mapToInt(f -> f.code().length()).max().orElse(1);
    double need = longest * ROOM_FOR_A_LETTER + 8;
    double y = row.middleY() + HullRow.height(row.hull(), row.scale()) / 2 + 38;
    double free = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < places.size(); i++) {
      if (places.get(i) >= free) {
        svg.label(new Spot(places.get(i), y), Anchor.MIDDLE, row.frames().get(i).code());
        free = places.get(i) + need;
      }
    }
  }
}
