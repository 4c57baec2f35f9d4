package dev.flangewright.parts.web;

import dev.flangewright.forming.StationFigures;

/** A station of a flange as the part sheet lists it; lengths in mm. */
record StationRow(
    int number,
    String kind,
    Figure arc,
    Figure radius,
    Figure angle,
    Figure width,
    Figure blank,
    Figure beyondMouldLine,
    Figure strain,
    Figure thickness,
    Figure ruffleRatio,
    Figure split,
    Figure blockAngle) {

  static StationRow of(StationFigures station) {
    return new StationRow(
        station.number(),
        station.kind().label(),
        Figure.mm(station.arcMm(), 1),
        Figure.mm(station.radiusMm(), 1),
        Figure.of(station.bendAngleDeg(), 1, "°"),
        Figure.mm(station.flangeWidthMm(), 1),
        Figure.mm(station.blankBeyondTangentMm(), 2),
        Figure.mm(station.blankBeyondMouldLineMm(), 2),
        Figure.percent(station.edgeStrain(), 2),
        Figure.mm(station.edgeThicknessMm(), 3),
        Figure.of(station.ruffleRatio(), 1, ""),
        Figure.percent(station.splitUtilisation(), 0),
        Figure.of(station.blockAngleDeg(), 1, "°"));
  }
}
