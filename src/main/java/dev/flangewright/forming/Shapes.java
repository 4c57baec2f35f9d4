package dev.flangewright.forming;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Points in the frame's plane as the geometry library takes them, and back. */
final class Shapes {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Shapes() {}

  static Coordinate at(Point point) {
    return new Coordinate(point.xMm(), point.yMm());
  }

  /** Closed: the last coordinate repeats the first. */
  static Coordinate[] ring(List<Point> corners) {
    var ring = new ArrayList<>(corners.stream().map(Shapes::at).toList());
    ring.add(ring.get(0).copy());
    return ring.toArray(Coordinate[]::new);
  }

  static Polygon polygon(List<Point> corners) {
    return FACTORY.createPolygon(ring(corners));
  }

  static LineString line(List<Point> points) {
    return FACTORY.createLineString(points.stream().map(Shapes::at).toArray(Coordinate[]::new));
  }

  static org.locationtech.jts.geom.Point point(Point point) {
    return FACTORY.createPoint(at(point));
  }

  /** The corners of a closed ring, counter-clockwise, the last not repeating the first. */
  static List<Point> corners(Coordinate[] ring) {
    var corners =
        new ArrayList<>(
            Arrays.stream(ring, 0, ring.length - 1).map(c -> new Point(c.x, c.y)).toList());
    if (Area.ofRingSigned(ring) > 0) {
      Collections.reverse(corners);
    }
    return List.copyOf(corners);
  }
}
