package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Graph;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.StationFigures;
import dev.flangewright.parts.PartFigures;
import java.util.List;
import java.util.stream.Stream;

/**
 * The blank a flange needs beyond the bend's tangent line along its mould line, beside what a
 * straight flange of the same width and angle would need.
 */
public final class BlankWidthGraph {

  private BlankWidthGraph() {}

  /**
   * @param id unique on the page
   * @return SVG for a page
   */
  public static String of(
      String id, String partNumber, PartFigures part, PartFigures.OfFlange flange) {
    return of(id, partNumber, FormedEdge.of(part, flange));
  }

  static String of(String id, String partNumber, FormedEdge edge) {
    List<StationFigures> stations = edge.stations();
    List<Double> arcs = stations.stream().map(StationFigures::arcMm).toList();
    List<Double> blank = stations.stream().map(StationFigures::blankBeyondTangentMm).toList();
    List<Double> straight = stations.stream().map(s -> s.section().straightBlankMm()).toList();
    var all =
        Stream.concat(blank.stream(), straight.stream()).mapToDouble(d -> d).summaryStatistics();
    double room = Math.max(0.5, 0.35 * (all.getMax() - all.getMin()));
    Graph graph = new Graph(0, edge.contour().lengthMm(), all.getMin() - room, all.getMax() + room);
    Svg svg =
        Svg.picture(
            id,
            "drawing full column-wide",
            Graph.paper(),
            "Blank width along the %s flange of %s".formatted(edge.name(), partNumber),
            said(stations));
    graph.axes(svg, "Along the mould line, mm", "Blank beyond the tangent line, mm");
    svg.path("d-bend", graph.curve(arcs, straight));
    svg.path("d-curve", graph.curve(arcs, blank));
    Spot begin = graph.at(0, straight.get(0));
    boolean below = straight.get(0) < blank.get(0);
    svg.quiet(
        new Spot(begin.x() + 6, begin.y() + (below ? 22 : -8)),
        Anchor.START,
        "if it were straight");
    StationFigures widest = widest(stations);
    double most = widest.blankBeyondTangentMm();
    graph.peak(
        svg,
        widest.arcMm(),
        most,
        below,
        Numbers.figure(most, 1) + " mm at station " + widest.number());
    return svg.written();
  }

  private static StationFigures widest(List<StationFigures> stations) {
    StationFigures widest = stations.get(0);
    for (StationFigures station : stations) {
      widest = station.blankBeyondTangentMm() > widest.blankBeyondTangentMm() ? station : widest;
    }
    return widest;
  }

  private static String said(List<StationFigures> stations) {
    StationFigures widest = widest(stations);
    double least =
        stations.stream().mapToDouble(StationFigures::blankBeyondTangentMm).min().orElse(0);
    return "The blank needs between %s and %s mm beyond the tangent line, most at station %d."
        .formatted(
            Numbers.figure(least, 1),
            Numbers.figure(widest.blankBeyondTangentMm(), 1),
            widest.number());
  }
}
