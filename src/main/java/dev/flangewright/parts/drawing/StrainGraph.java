package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Graph;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.EdgePiece;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.StationFigures;
import dev.flangewright.parts.PartFigures;
import java.util.ArrayList;
import java.util.List;

/**
 * The strain along a flange's edge against the length along its mould line: the comb laid straight,
 * with the strain at which it would split where it stretches and at which it begins to ruffle where
 * it shrinks.
 */
public final class StrainGraph {

  private static final double HEADROOM = 1.3;
  private static final double SMALLEST_RANGE = 0.001;

  private final FormedEdge edge;
  private final Graph graph;
  private final double top;

  private StrainGraph(FormedEdge edge) {
    this.edge = edge;
    double stretch = edge.stretchInSight();
    double reach = Math.max(-edge.mostShrink(), stretch);
    double least = Math.max(SMALLEST_RANGE, reach * 0.15);
    this.top = HEADROOM * Math.max(least, stretch);
    double bottom = HEADROOM * Math.min(-least, edge.mostShrink());
    this.graph = new Graph(0, edge.contour().lengthMm(), bottom * 100, top * 100);
  }

  /**
   * @param id unique on the page
   * @return SVG for a page
   */
  public static String of(
      String id, String partNumber, PartFigures part, PartFigures.OfFlange flange) {
    return of(id, partNumber, FormedEdge.of(part, flange));
  }

  static String of(String id, String partNumber, FormedEdge edge) {
    return new StrainGraph(edge).drawn(id, partNumber);
  }

  private String drawn(String id, String partNumber) {
    String title = "Strain along the %s edge of %s".formatted(edge.name(), partNumber);
    Svg svg =
        Svg.picture(id, "drawing full column-wide", Graph.paper(), title, edge.said() + limits());
    graph.axes(svg, "Along the mould line, mm", "Edge strain, %");
    svg.path("d-axis", graph.level(0));
    teeth(svg);
    shrinkingRuns().forEach(run -> ruffles(svg, run));
    splits(svg);
    edge.figures().pieces().stream()
        .filter(EdgePiece::hasMetal)
        .forEach(piece -> svg.path("d-curve", graph.curve(piece.arcsMm(), percents(piece))));
    peak(svg);
    return svg.written();
  }

  private void teeth(Svg svg) {
    for (StationFigures station : edge.figures().formed()) {
      String cssClass = edge.isPastSplitLimit(station) ? "d-tooth d-tooth-over" : "d-tooth";
      Spot foot = graph.at(station.arcMm(), 0);
      svg.path(cssClass, Lines.open(foot, graph.at(station.arcMm(), 100 * station.edgeStrain())));
    }
  }

  private void ruffles(Svg svg, List<StationFigures> run) {
    List<Spot> line =
        run.stream().map(s -> graph.at(s.arcMm(), 100 * edge.ruffleStrain(s))).toList();
    if (line.stream().anyMatch(spot -> spot.y() > graph.plot().maxY())) {
      return;
    }
    svg.path("d-limit", Lines.open(line));
    StationFigures first = run.get(0);
    Spot zero = graph.at(first.arcMm(), 0);
    svg.label(
        new Spot(zero.x() + 6, zero.y() - 9),
        Anchor.START,
        "ruffles beyond " + Numbers.percent(edge.ruffleStrain(first)));
  }

  /** Lettered at the end of the graph where the curve stays lower. */
  private void splits(Svg svg) {
    Double limit = edge.splitLimit();
    if (limit == null || edge.mostStretch() == 0) {
      return;
    }
    List<StationFigures> stations = edge.stations();
    double first = stations.get(0).edgeStrain();
    boolean atBegin = first <= stations.get(stations.size() - 1).edgeStrain();
    Spot end = graph.at(atBegin ? 0 : edge.contour().lengthMm(), 100 * Math.min(limit, top));
    Anchor anchor = atBegin ? Anchor.START : Anchor.END;
    double x = end.x() + (atBegin ? 6 : -6);
    String words = "split limit " + Numbers.percent(limit);
    if (limit > top) {
      svg.label(new Spot(x, end.y() + 18), anchor, words + ", off the graph");
      return;
    }
    svg.path("d-limit", graph.level(100 * limit));
    svg.label(new Spot(x, end.y() - 8), anchor, words);
  }

  private void peak(Svg svg) {
    if (edge.peak() != 0) {
      double arc = edge.stations().get(edge.peakIndex()).arcMm();
      graph.peak(svg, arc, 100 * edge.peak(), edge.peak() > 0, edge.peakLabel());
    }
  }

  private static List<Double> percents(EdgePiece piece) {
    return piece.arcsMm().stream().map(arc -> 100 * piece.edgeStrainAt(arc)).toList();
  }

  /** Runs of at least two neighbouring stations that shrink. */
  private List<List<StationFigures>> shrinkingRuns() {
    var runs = new ArrayList<List<StationFigures>>();
    var run = new ArrayList<StationFigures>();
    for (StationFigures station : edge.stations()) {
      if (station.kind() == FlangeKind.SHRINK) {
        run.add(station);
      } else if (!run.isEmpty()) {
        runs.add(List.copyOf(run));
        run.clear();
      }
    }
    runs.add(List.copyOf(run));
    return runs.stream().filter(found -> found.size() > 1).toList();
  }

  private String limits() {
    Double limit = edge.splitLimit();
    return edge.mostStretch() == 0 || limit == null
        ? ""
        : " It would split at " + Numbers.percent(limit) + ".";
  }
}
