package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Graph;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.TrimCurve;
import dev.flangewright.parts.PartFigures;
import java.util.List;

/**
 * The largest strain of a flange's edge against the width that it carries, from the finished to the
 * working width. Shrink and stretch both count upwards: what matters is how much.
 */
public final class TrimGraph {

  private static final double HEADROOM = 1.3;

  /** Below this share of the graph's height there is no room for lettering under the curve. */
  private static final double LOW = 0.2;

  /** Room left and right of the curve, as a share of it. */
  private static final double MARGIN = 0.08;

  private static final double SMALLEST_RANGE_MM = 0.1;
  private static final double SMALLEST_RANGE_PERCENT = 0.1;

  private TrimGraph() {}

  /**
   * @param id unique on the page
   * @return SVG for a page
   */
  public static String of(
      String id, String partNumber, PartFigures part, PartFigures.OfFlange flange) {
    double finishedMm = flange.flange().drawn().finishedWidthMm().value();
    TrimCurve curve = TrimCurve.of(flange.working(), part.sheet(), finishedMm);
    return of(id, partNumber, flange.flange().name(), curve);
  }

  static String of(String id, String partNumber, String flangeName, TrimCurve curve) {
    TrimCurve.At finished = curve.finished();
    TrimCurve.At working = curve.working();
    double room = MARGIN * Math.max(SMALLEST_RANGE_MM, working.widthMm() - finished.widthMm());
    double top = HEADROOM * most(curve);
    Graph graph = new Graph(finished.widthMm() - room, working.widthMm() + room, 0, top);
    Svg svg =
        Svg.picture(
            id,
            "drawing full column-wide",
            Graph.paper(),
            "Strain of the %s edge of %s against its width".formatted(flangeName, partNumber),
            said(flangeName, finished, working));
    graph.axes(svg, "Flange width carried while forming, mm", "Largest edge strain, %");
    svg.path("d-curve", graph.curve(widths(curve), percents(curve)));
    mark(svg, graph, finished, percent(finished) < LOW * top, "finished");
    mark(svg, graph, working, true, "working");
    return svg.written();
  }

  private static void mark(Svg svg, Graph graph, TrimCurve.At at, boolean above, String which) {
    String words = "%s, %s mm: %s %%".formatted(which, width(at), strain(at));
    graph.peak(svg, at.widthMm(), percent(at), above, words);
  }

  private static String said(String name, TrimCurve.At finished, TrimCurve.At working) {
    return "Carried at the working width of %s mm the %s edge needs %s %%; trimmed to %s mm, %s %%."
        .formatted(width(working), name, strain(working), width(finished), strain(finished));
  }

  private static double most(TrimCurve curve) {
    return Math.max(
        SMALLEST_RANGE_PERCENT,
        percents(curve).stream().mapToDouble(percent -> percent).max().orElseThrow());
  }

  private static List<Double> widths(TrimCurve curve) {
    return curve.points().stream().map(TrimCurve.At::widthMm).toList();
  }

  private static List<Double> percents(TrimCurve curve) {
    return curve.points().stream().map(TrimGraph::percent).toList();
  }

  private static double percent(TrimCurve.At at) {
    return 100 * Math.abs(at.peakEdgeStrain());
  }

  private static String strain(TrimCurve.At at) {
    return Numbers.figure(percent(at), 2);
  }

  private static String width(TrimCurve.At at) {
    return Numbers.figure(at.widthMm(), 1);
  }
}
