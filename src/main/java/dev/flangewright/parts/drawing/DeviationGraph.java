package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Graph;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.FairFit;
import dev.flangewright.forming.FitStation;

/**
 * How far each station lies off the fair curve: a needle a station along the mould line, towards
 * the web upwards, with the tolerance as a fine line on either side.
 */
public final class DeviationGraph {

  private static final double HEADROOM = 1.5;

  private final FairFit fit;
  private final Graph graph;

  private DeviationGraph(FairFit fit) {
    this.fit = fit;
    double reach = HEADROOM * Math.max(fit.toleranceMm(), fit.maxDeviationMm());
    this.graph = new Graph(0, fit.contour().lengthMm(), -reach, reach);
  }

  /**
   * @param id unique on the page
   * @param fit with a tolerance above zero
   * @return SVG for a page
   */
  public static String of(String id, String partNumber, String flangeName, FairFit fit) {
    return new DeviationGraph(fit).drawn(id, partNumber, flangeName);
  }

  private String drawn(String id, String partNumber, String flangeName) {
    String title =
        "Stations of the %s edge of %s off the fair curve".formatted(flangeName, partNumber);
    Svg svg = Svg.picture(id, "drawing full column-wide", Graph.paper(), title, said());
    graph.axes(svg, "Along the mould line, mm", "Off the fair curve, mm; up is towards the web");
    svg.path("d-axis", graph.level(0));
    tolerance(svg);
    new CornerMarks(fit, graph).draw(svg);
    for (int i = 0; i < fit.stations().size(); i++) {
      needle(svg, fit.contour().arcMm(i), fit.stations().get(i).deviationMm());
    }
    worst(svg);
    return svg.written();
  }

  /** Lettered on the side where the station farthest off is not. */
  private void tolerance(Svg svg) {
    svg.path("d-limit", graph.level(fit.toleranceMm()));
    svg.path("d-limit", graph.level(-fit.toleranceMm()));
    boolean below = fit.worst().deviationMm() > 0;
    Spot end = graph.at(fit.contour().lengthMm(), (below ? -1 : 1) * fit.toleranceMm());
    svg.label(
        new Spot(end.x() - 6, end.y() + (below ? 20 : -8)),
        Anchor.END,
        "tolerance " + Numbers.figure(fit.toleranceMm(), 2) + " mm");
  }

  private void needle(Svg svg, double arcMm, double deviationMm) {
    boolean over = Math.abs(deviationMm) > fit.toleranceMm();
    Spot tip = graph.at(arcMm, deviationMm);
    svg.path(over ? "d-tooth d-tooth-over" : "d-tooth", Lines.open(graph.at(arcMm, 0), tip));
    svg.draw("circle", "class", "d-dot", "cx", tip.x(), "cy", tip.y(), "r", 2);
  }

  /** Lettered beyond the tolerance, whose line would else run through the words. */
  private void worst(Svg svg) {
    FitStation worst = fit.worst();
    double arc = fit.contour().arcMm(fit.stations().indexOf(worst));
    graph.ring(svg, arc, worst.deviationMm());
    double beyond = Math.max(fit.toleranceMm(), fit.maxDeviationMm());
    boolean up = worst.deviationMm() > 0;
    double height = graph.at(arc, up ? beyond : -beyond).y() + (up ? -12 : 26);
    String words = Numbers.figure(fit.maxDeviationMm(), 2) + " mm at station " + worst.number();
    graph.words(svg, arc, height, words);
  }

  private String said() {
    return "Farthest off is station %d, by %s mm; the tolerance is %s mm.%s"
        .formatted(
            fit.worst().number(),
            Numbers.figure(fit.maxDeviationMm(), 2),
            Numbers.figure(fit.toleranceMm(), 2),
            CornerMarks.said(fit));
  }
}
