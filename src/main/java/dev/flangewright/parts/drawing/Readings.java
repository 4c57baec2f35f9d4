package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.parts.PartFigures;
import java.util.List;

/**
 * The points of fitted contours as they were read, as rings beside the mould line drawn.
 *
 * @param lines one list of points for each fitted flange, mm
 */
record Readings(List<List<Spot>> lines) {

  static final Readings NONE = new Readings(List.of());

  private static final double RADIUS = 2;

  /** Nearer to each other than this on the paper, rings run together and are left out. */
  private static final double APART = 3.5 * RADIUS;

  static Readings of(PartFigures part) {
    return new Readings(
        part.flanges().stream()
            .map(PartFigures.OfFlange::flange)
            .filter(flange -> flange.drawn().toleranceMm() > 0)
            .map(
                flange ->
                    flange.stations().list().stream()
                        .map(s -> new Spot(s.xMm().value(), s.yMm().value()))
                        .toList())
            .toList());
  }

  void draw(Svg svg, Fit fit) {
    for (List<Spot> line : legible(fit)) {
      for (Spot ring : fit.all(line)) {
        svg.draw("circle", "class", "d-read", "cx", ring.x(), "cy", ring.y(), "r", RADIUS);
      }
    }
  }

  String said(Fit fit) {
    return legible(fit).isEmpty() ? "" : " Small rings are the points as read.";
  }

  private List<List<Spot>> legible(Fit fit) {
    return lines.stream().filter(line -> apart(fit.all(line)) >= APART).toList();
  }

  /** On an average. */
  private static double apart(List<Spot> ring) {
    double length = 0;
    for (int i = 1; i < ring.size(); i++) {
      length += ring.get(i - 1).distance(ring.get(i));
    }
    return length / Math.max(1, ring.size() - 1);
  }
}
