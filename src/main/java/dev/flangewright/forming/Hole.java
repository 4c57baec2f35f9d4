package dev.flangewright.forming;

/**
 * A round hole in the web.
 *
 * @param label what it is called on this part
 * @param xMm of its centre, in the axes of the contours
 * @param yMm of its centre
 * @param diameterMm above 0, up to 1000
 */
public record Hole(String label, HoleKind kind, double xMm, double yMm, double diameterMm) {

  public Hole {
    FormingInput.X.check(xMm);
    FormingInput.Y.check(yMm);
    FormingInput.HOLE_DIAMETER.check(diameterMm);
  }

  Point centre() {
    return new Point(xMm, yMm);
  }

  double radiusMm() {
    return diameterMm / 2;
  }

  double areaMm2() {
    return Math.PI * radiusMm() * radiusMm();
  }

  /** Whether an edge distance counted in diameters is asked of it: a rivet or a pin bears on it. */
  boolean bears() {
    return kind != HoleKind.LIGHTENING;
  }
}
