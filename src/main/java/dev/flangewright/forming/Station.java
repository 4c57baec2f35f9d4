package dev.flangewright.forming;

/**
 * A point of a flange's outer mould line, with the flange's angle and width there.
 *
 * @param number as in the loft's file; rises along the contour
 * @param xMm in the frame's plane, within ±100 m
 * @param yMm in the frame's plane, up, within ±100 m
 * @param bendAngleDeg from flat, above 0 and below 165
 * @param widthMm to the outer mould line, above 0, up to 500
 */
public record Station(int number, double xMm, double yMm, double bendAngleDeg, double widthMm) {

  public Station {
    try {
      FormingInput.X.check(xMm);
      FormingInput.Y.check(yMm);
      FormingInput.BEND_ANGLE.check(bendAngleDeg);
      FormingInput.STATION_WIDTH.check(widthMm);
    } catch (FormingException refusal) {
      throw refusal.at(number);
    }
  }

  /** The same station at another point. */
  Station movedTo(Point point) {
    return new Station(number, point.xMm(), point.yMm(), bendAngleDeg, widthMm);
  }

  /** The same station, no wider than that. */
  Station trimmedTo(double width) {
    return new Station(number, xMm, yMm, bendAngleDeg, Math.min(width, widthMm));
  }

  Point point() {
    return new Point(xMm, yMm);
  }
}
