package dev.flangewright.forming;

/**
 * Which way an edge is off, and so what is left to do to it.
 *
 * <p>FM-BOW: an edge that is too long makes the web convex on the face that the flange stands on,
 * so the gap in the middle of a straight-edge shows on the other face. FM-TEMPLATE: an edge that is
 * too short pulls the web's end points towards itself, so the template laid to its contour touches
 * at the ends and gaps in the middle, on the convex and on the concave side alike. Both follow from
 * the sign of the bow in {@link BowGauge} and {@link TemplateGauge}: derived.
 */
public enum EdgeError {
  TOO_LONG("too long", "to take out"),
  TOO_SHORT("too short", "to put in");

  private final String label;
  private final String left;

  EdgeError(String label, String left) {
    this.label = label;
    this.left = left;
  }

  /**
   * By a straight-edge laid along the web.
   *
   * @param gapOnFlangeFace whether the gap in the middle shows on the face the flange stands on
   */
  public static EdgeError byStraightEdge(boolean gapOnFlangeFace) {
    return gapOnFlangeFace ? TOO_SHORT : TOO_LONG;
  }

  /**
   * By the contour template laid to the flange's own contour.
   *
   * @param gapInTheMiddle true when it touches at its ends, false when it rocks on its middle
   */
  public static EdgeError byTemplate(boolean gapInTheMiddle) {
    return gapInTheMiddle ? TOO_SHORT : TOO_LONG;
  }

  /** What an unfinished edge of a kind still is: a shrinking one too long, others too short. */
  public static EdgeError ofUnfinished(FlangeKind kind) {
    return kind == FlangeKind.SHRINK ? TOO_LONG : TOO_SHORT;
  }

  /** As it follows "the edge is". */
  public String label() {
    return label;
  }

  /** As it follows a number of millimetres. */
  public String left() {
    return left;
  }

  /** The strain still to be given to the edge, signed, from its magnitude. */
  double signed(double strain) {
    return this == TOO_LONG ? -strain : strain;
  }
}
