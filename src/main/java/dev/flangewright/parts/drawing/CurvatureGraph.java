package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Graph;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.FairFit;
import dev.flangewright.forming.FitStation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The curvature of a fair curve along the mould line, in its confidence band; above zero the edge
 * shrinks, below it stretches. In 1/m, which is 1000 divided by the radius in mm.
 */
public final class CurvatureGraph {

  private static final double PER_METRE = 1000;
  private static final double MARGIN = 0.12;

  /** Where a fit is straight throughout, the graph reaches at least this far, 1/m. */
  private static final double SMALLEST_REACH = 0.01;

  private final FairFit fit;
  private final double bottom;
  private final double top;
  private final Graph graph;

  private CurvatureGraph(FairFit fit) {
    this.fit = fit;
    double least = Math.min(0, least(FitStation::curvaturePerMm));
    double most = Math.max(0, -least(s -> -s.curvaturePerMm()));
    double reach = Math.max(SMALLEST_REACH, most - least);
    double low = Math.max(least(FitStation::curvatureLowPerMm), least - reach);
    double high = Math.min(-least(s -> -s.curvatureHighPerMm()), most + reach);
    double room = MARGIN * Math.max(SMALLEST_REACH, Math.max(0, high) - Math.min(0, low));
    this.bottom = Math.min(0, low) - room;
    this.top = Math.max(0, high) + room;
    this.graph = new Graph(0, fit.contour().lengthMm(), bottom, top);
  }

  /**
   * @param id unique on the page
   * @return SVG for a page
   */
  public static String of(String id, String partNumber, String flangeName, FairFit fit) {
    return new CurvatureGraph(fit).drawn(id, partNumber, flangeName);
  }

  private String drawn(String id, String partNumber, String flangeName) {
    String title = "Curvature along the %s edge of %s".formatted(flangeName, partNumber);
    Svg svg = Svg.picture(id, "drawing full column-wide", Graph.paper(), title, said());
    graph.axes(svg, "Along the mould line, mm", "Curvature, 1/m; above 0 shrinks, below stretches");
    svg.path("d-band", Lines.closed(band()));
    svg.path("d-axis", graph.level(0));
    new CornerMarks(fit, graph).draw(svg);
    svg.path("d-curve", Lines.open(line(FitStation::curvaturePerMm)));
    if (runsOff()) {
      Spot foot = new Spot(graph.plot().minX() + 6, graph.plot().maxY() - 8);
      svg.quiet(foot, Anchor.START, "the band runs off the graph");
    }
    tightest(svg);
    return svg.written();
  }

  private List<Spot> band() {
    List<Spot> around = new ArrayList<>(line(FitStation::curvatureHighPerMm));
    List<Spot> back = line(FitStation::curvatureLowPerMm);
    for (int i = back.size() - 1; i >= 0; i--) {
      around.add(back.get(i));
    }
    return around;
  }

  private List<Spot> line(ToDoubleFunction<FitStation> perMm) {
    return IntStream.range(0, fit.stations().size())
        .mapToObj(
            i -> {
              double perMetre = PER_METRE * perMm.applyAsDouble(fit.stations().get(i));
              double inSight = Math.max(bottom, Math.min(top, perMetre));
              return graph.at(fit.contour().arcMm(i), inSight);
            })
        .toList();
  }

  private boolean runsOff() {
    return least(FitStation::curvatureLowPerMm) < bottom
        || -least(s -> -s.curvatureHighPerMm()) > top;
  }

  private void tightest(Svg svg) {
    FitStation tightest = tightest();
    if (tightest.curvaturePerMm() != 0) {
      int i = fit.stations().indexOf(tightest);
      double perMetre = PER_METRE * tightest.curvaturePerMm();
      graph.peak(svg, fit.contour().arcMm(i), perMetre, perMetre > 0, words(tightest));
    }
  }

  private static String words(FitStation tightest) {
    double radiusMm = 1 / Math.abs(tightest.curvaturePerMm());
    return "radius " + Numbers.figure(radiusMm, 0) + " mm at station " + tightest.number();
  }

  private FitStation tightest() {
    return fit.stations().stream()
        .max(Comparator.comparingDouble(station -> Math.abs(station.curvaturePerMm())))
        .orElseThrow();
  }

  /** In 1/m. */
  private double least(ToDoubleFunction<FitStation> perMm) {
    return PER_METRE * fit.stations().stream().mapToDouble(perMm).min().orElseThrow();
  }

  private String said() {
    FitStation tightest = tightest();
    String where =
        tightest.curvaturePerMm() == 0
            ? "The fair curve is straight."
            : "Tightest: " + words(tightest) + ".";
    return where + CornerMarks.said(fit);
  }
}
