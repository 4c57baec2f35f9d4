package dev.flangewright.forming;

import java.util.List;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * The blank to cut: the developed outline with a trim allowance all round, and the smallest
 * rectangle of sheet it fits into.
 *
 * <p>FM-ALLOWANCE: the outline moved outwards by the allowance, its corners mitred but never longer
 * than {@link #MITRE_LIMIT} allowances; the rectangle of least area around it, which has one side
 * along the outline's convex hull (rotating calipers). A notch narrower than two allowances closes,
 * and the metal in it stays. Area by the corners, less the holes that lie within. Derived.
 *
 * <p>The default allowance is {@value #DEFAULT_ALLOWANCE_MM} mm, because the working width of a
 * flange over its finished width is a trim allowance already: this one is for what is dressed off
 * the cut edge before forming, and for the ends. Shop default, no source.
 *
 * @param allowanceMm metal left outside the developed outline, from 0 to 100
 * @param line corners of the line to cut, counter-clockwise, the last not repeating the first
 * @param areaMm2 within the line, holes taken off
 * @param rectangle the smallest around the line
 */
public record CutBlank(
    double allowanceMm, List<Point> line, double areaMm2, SmallestRectangle rectangle) {

  /** Mitres are cut off at so many allowances from their corner: shop default, no source. */
  public static final double MITRE_LIMIT = 2;

  public static final double DEFAULT_ALLOWANCE_MM = 0;

  /**
   * A rectangle at any angle.
   *
   * @param lengthMm of its longer side
   * @param breadthMm of its shorter side
   * @param angleDeg of its longer side from the x axis towards y, from 0 to below 180
   * @param corners its four corners in order
   */
  public record SmallestRectangle(
      double lengthMm, double breadthMm, double angleDeg, List<Point> corners) {

    static SmallestRectangle around(Polygon shape) {
      var corners =
          Shapes.corners(MinimumAreaRectangle.getMinimumRectangle(shape).getCoordinates());
      double first = corners.get(0).distanceMm(corners.get(1));
      double second = corners.get(1).distanceMm(corners.get(2));
      int along = first >= second ? 0 : 1;
      double heading = Math.toDegrees(corners.get(along).headingTo(corners.get(along + 1)));
      return new SmallestRectangle(
          Math.max(first, second), Math.min(first, second), halfTurn(heading), corners);
    }

    /** A line points both ways; what rounding leaves just below 180 is 0. */
    private static double halfTurn(double headingDeg) {
      double angle = headingDeg % 180;
      double positive = angle < 0 ? angle + 180 : angle;
      return positive > 180 - 1e-9 ? 0 : positive;
    }
  }

  /**
   * @param outline a valid outline, counter-clockwise
   * @param holesMm2 area of the holes within it
   */
  static CutBlank of(List<Point> outline, double allowanceMm, double holesMm2) {
    FormingInput.TRIM_ALLOWANCE.check(allowanceMm);
    var line = allowanceMm == 0 ? outline : movedOut(outline, allowanceMm);
    return new CutBlank(
        allowanceMm,
        line,
        Area.ofRing(Shapes.ring(line)) - holesMm2,
        SmallestRectangle.around(Shapes.polygon(line)));
  }

  private static List<Point> movedOut(List<Point> outline, double allowanceMm) {
    var mitred =
        new BufferParameters(
            BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
            BufferParameters.CAP_FLAT,
            BufferParameters.JOIN_MITRE,
            MITRE_LIMIT);
    var moved = (Polygon) BufferOp.bufferOp(Shapes.polygon(outline), allowanceMm, mitred);
    return Shapes.corners(moved.getExteriorRing().getCoordinates());
  }
}
