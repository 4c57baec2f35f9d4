package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Anchor;
import dev.flangewright.drawing.Fit;
import dev.flangewright.drawing.Lines;
import dev.flangewright.drawing.Spot;
import dev.flangewright.drawing.Svg;
import dev.flangewright.forming.Hole;

/** A hole at its true size with a centre mark, and its label beside it. */
record HoleMark(Hole hole, Fit fit) {

  /** How far a centre mark reaches beyond the rim, so that the smallest pilot is found. */
  private static final double BEYOND = 7;

  void draw(Svg svg) {
    Spot centre = fit.at(hole.xMm(), hole.yMm());
    double radius = hole.diameterMm() / 2 * fit.scale();
    double arm = radius + BEYOND;
    svg.draw("circle", "class", "d-hole", "cx", centre.x(), "cy", centre.y(), "r", radius);
    svg.path(
        "d-centre",
        Lines.open(new Spot(centre.x() - arm, centre.y()), new Spot(centre.x() + arm, centre.y()))
            + Lines.open(
                new Spot(centre.x(), centre.y() - arm), new Spot(centre.x(), centre.y() + arm)));
    svg.quiet(
        new Spot(centre.x() + radius * 0.7 + 6, centre.y() - radius * 0.7 - 6),
        Anchor.START,
        hole.label());
  }
}
