package dev.flangewright.parts.web;

import dev.flangewright.forming.FormingPlan;

/** A pass of a flange's plan as the part sheet lists it. */
record PassRow(int number, Figure stopAt, Figure strainSoFar, boolean softenFirst) {

  static PassRow of(FormingPlan.Pass pass) {
    return new PassRow(
        pass.number(),
        Figure.of(pass.toAngleDeg(), 1, "°"),
        Figure.percent(pass.strainSoFar(), 2),
        pass.softenFirst());
  }
}
