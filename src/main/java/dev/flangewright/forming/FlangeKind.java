package dev.flangewright.forming;

/** What the edge of a flange has to do: get shorter, get longer, neither, or both along its run. */
public enum FlangeKind {
  /** Convex side: the contour turns left, the blank edge is too long and must be shrunk. */
  SHRINK("shrink"),
  /** Concave side: the contour turns right, the blank edge is too short and must be stretched. */
  STRETCH("stretch"),
  /** A straight run: folding alone makes it. */
  PLAIN("plain"),
  /** A contour with shrinking and stretching runs; a single section is never mixed. */
  MIXED("mixed");

  private static final double STRAIGHT_PER_MM = 1e-9;

  private final String label;

  FlangeKind(String label) {
    this.label = label;
  }

  /** PLAIN below 1e-9/mm, which is a radius of a thousand kilometres. */
  static FlangeKind ofCurvature(double perMm) {
    if (Math.abs(perMm) < STRAIGHT_PER_MM) {
      return PLAIN;
    }
    return perMm > 0 ? SHRINK : STRETCH;
  }

  /** The word used on pages and in files. */
  public String label() {
    return label;
  }
}
