package dev.flangewright.parts.web;

import dev.flangewright.forming.FlangeFigures;
import dev.flangewright.forming.StationFigures;
import java.util.List;
import java.util.stream.IntStream;

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

  /** One for every station; where a cutout takes the flange away the kind says so. */
  static List<StationRow> of(FlangeFigures figures) {
    return IntStream.range(0, figures.stations().size())
        .mapToObj(i -> of(figures.stations().get(i), figures.isCutAway(i)))
        .toList();
  }

  private static StationRow of(StationFigures station, boolean cutAway) {
    return new StationRow(
        station.number(),
        cutAway ? "cut out (as if it were not)" : station.kind().label(),
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
