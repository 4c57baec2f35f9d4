package dev.flangewright.drawing;

/** A spot on the paper, in the drawing's units, y down; or in a plan, in mm, y up. */
public record Spot(double x, double y) {

  /** This spot moved by a length along a direction of unit length. */
  public Spot moved(Spot direction, double length) {
    return new Spot(x + direction.x * length, y + direction.y * length);
  }

  /** The spot a share (0 to 1) of the way to another. */
  public Spot towards(Spot other, double share) {
    return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
  }

  public double distance(Spot other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /** The direction to another spot, of unit length; along x when both are one. */
  public Spot directionTo(Spot other) {
    double length = distance(other);
    return length == 0 ? new Spot(1, 0) : new Spot((other.x - x) / length, (other.y - y) / length);
  }

  /** A quarter turn, which on the paper (y down) is to the right of travel. */
  public Spot turned() {
    return new Spot(-y, x);
  }

  public double dot(Spot other) {
    return x * other.x + y * other.y;
  }
}
