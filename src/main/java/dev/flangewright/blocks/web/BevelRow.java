package dev.flangewright.blocks.web;

import dev.flangewright.drawing.Numbers;
import dev.flangewright.forming.Springback;
import dev.flangewright.forming.StationFigures;

/**
 * A station in the bevel table of a block; angles in degrees, along the mould line in mm.
 *
 * @param block empty where the block angle is not known, as are tilt and lean
 * @param lean which way the face leans: {@code in} or {@code out} below; empty where square
 */
record BevelRow(int station, String along, String bend, String block, String tilt, String lean) {

  private static final double SQUARE_DEG = 90;
  private static final double LEAST_SHOWN_DEG = 0.05;

  static BevelRow of(StationFigures station) {
    String along = Numbers.figure(station.arcMm(), 1);
    String bend = Numbers.figure(station.bendAngleDeg(), 1);
    Double block = station.blockAngleDeg();
    if (block == null) {
      return new BevelRow(station.number(), along, bend, "", "", "");
    }
    return new BevelRow(
        station.number(),
        along,
        bend,
        Numbers.figure(block, 1),
        Numbers.figure(Springback.sawTiltDeg(block), 1),
        lean(block));
  }

  private static String lean(double block) {
    if (Springback.sawTiltDeg(block) < LEAST_SHOWN_DEG) {
      return "";
    }
    return block > SQUARE_DEG ? "in" : "out";
  }
}
