package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Graph;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Numbers;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.Corner;
import dev.flangewright.forming.FairFit;

/** Upright lines in a graph along a contour, where the contour has corners. */
record CornerMarks(FairFit fit, Graph graph) {

  void draw(Svg svg) {
    for (Corner corner : fit.corners()) {
      double x = graph.at(fit.contour().arcMm(index(corner)), 0).x();
      Spot top = new Spot(x, graph.plot().minY());
      svg.path("d-leader", Lines.open(top, new Spot(x, graph.plot().maxY())));
      svg.label(
          new Spot(x, top.y() - 8),
          Anchor.MIDDLE,
          "corner " + Numbers.figure(Math.abs(corner.turnDeg()), 0) + "°");
    }
  }

  private int index(Corner corner) {
    int i = 0;
    while (fit.stations().get(i).number() != corner.stationNumber()) {
      i++;
    }
    return i;
  }

  /** The corners as a sentence for who cannot see them; empty without one. */
  static String said(FairFit fit) {
    return switch (fit.corners().size()) {
      case 0 -> "";
      case 1 -> " A corner at station " + fit.corners().get(0).stationNumber() + ".";
      default -> " " + fit.corners().size() + " corners.";
    };
  }
}
