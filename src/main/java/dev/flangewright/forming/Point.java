package dev.flangewright.forming;

/** A point in the frame's plane, mm. */
public record Point(double xMm, double yMm) {

  /** Straight from here to the other point, mm. */
  public double distanceMm(Point other) {
    double x = other.xMm - xMm;
    double y = other.yMm - yMm;
    return Math.sqrt(x * x + y * y); // many times faster than hypot, which guards sizes no hull has
  }

  Point halfWayTo(Point other) {
    return towards(other, 0.5);
  }

  /** The point that far on the way to the other one: 0 is here, 1 is there. */
  Point towards(Point other, double share) {
    return new Point(xMm + share * (other.xMm - xMm), yMm + share * (other.yMm - yMm));
  }

  /** Direction towards the other point, radians from the x axis, counter-clockwise. */
  double headingTo(Point other) {
    return Math.atan2(other.yMm - yMm, other.xMm - xMm);
  }

  /** Distance from the line through a and b, positive when this point lies to its left, mm. */
  double leftOf(Point a, Point b) {
    double chord = a.distanceMm(b);
    if (chord == 0) {
      return distanceMm(a);
    }
    return ((b.xMm - a.xMm) * (yMm - a.yMm) - (b.yMm - a.yMm) * (xMm - a.xMm)) / chord;
  }

  /** The point a distance to the right of someone facing the heading, mm and radians. */
  Point toTheRight(double heading, double distanceMm) {
    return new Point(xMm + distanceMm * Math.sin(heading), yMm - distanceMm * Math.cos(heading));
  }
}
