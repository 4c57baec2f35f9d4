package dev.flangewright.parts.web;

import dev.flangewright.forming.BevelTable;
import dev.flangewright.forming.FlangeFigures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A station of the form block as the part sheet lists it.
 *
 * @param way which way the block's edge leans; empty where that is not known
 */
record BevelRow(int station, Figure along, Figure bend, Figure block, Figure tilt, String way) {

  private static final double SQUARE_TO_DEG = 0.05;

  static List<BevelRow> of(FlangeFigures figures) {
    return BevelTable.of(figures).rows().stream().map(BevelRow::of).toList();
  }

  private static BevelRow of(BevelTable.Row row) {
    return new BevelRow(
        row.station(),
        Figure.mm(row.arcMm(), 1),
        Figure.of(row.bendAngleDeg(), 1, "°"),
        Figure.of(row.blockAngleDeg(), 1, "°"),
        Figure.of(row.tiltDeg() == null ? null : Math.abs(row.tiltDeg()), 1, "°"),
        way(row.tiltDeg()));
  }

  private static String way(@Nullable Double tiltDeg) {
    if (tiltDeg == null) {
      return "";
    }
    return Math.abs(tiltDeg) < SQUARE_TO_DEG ? "square" : tiltDeg > 0 ? "leans under" : "leans out";
  }
}
