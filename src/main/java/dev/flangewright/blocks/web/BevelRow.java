package dev.flangewright.blocks.web;

import dev.flangewright.drawing.Numbers;
import dev.flangewright.forming.BevelTable;
import org.jspecify.annotations.Nullable;

/**
 * A station in the bevel table of a block; angles in degrees, along the mould line in mm.
 *
 * @param block empty where the block angle is not known, as is the tilt
 * @param tilt of the saw table, and which way the face leans: {@code 4.2° leans under}
 */
record BevelRow(int station, String along, String bend, String block, String tilt) {

  private static final double SQUARE_TO_DEG = 0.05;

  static BevelRow of(BevelTable.Row row) {
    return new BevelRow(
        row.station(),
        Numbers.figure(row.arcMm(), 1),
        Numbers.figure(row.bendAngleDeg(), 1),
        row.blockAngleDeg() == null ? "" : Numbers.figure(row.blockAngleDeg(), 1),
        tilt(row.tiltDeg()));
  }

  private static String tilt(@Nullable Double tiltDeg) {
    if (tiltDeg == null) {
      return "";
    }
    return Math.abs(tiltDeg) < SQUARE_TO_DEG
        ? "square"
        : Numbers.figure(Math.abs(tiltDeg), 1) + (tiltDeg > 0 ? "° leans under" : "° leans out");
  }
}
