package dev.flangewright.parts.drawing;

import dev.flangewright.drawing.Box;
import dev.flangewright.forming.Point;
import java.util.List;

/**
 * How much paper the lettering of the peaks needs on each side of a part: a side has to be wider
 * where a leader line leaves the part that way.
 *
 * @param plan of the part, mm
 */
record PeakRoom(List<FormedEdge> edges, Box plan) {

  private static final double PLAIN = 108;
  private static final double LETTERED = 226;
  private static final double TOP = 84;
  private static final double TOP_LETTERED = 130;
  private static final double BOTTOM_LETTERED = 84;

  /** Nearer to a side than this share of the part, lettering runs off it. */
  private static final double NEAR = 0.3;

  /** A leader line leaves towards a side when it leans there at least this much. */
  private static final double LEANS = 0.35;

  double left() {
    return leavesTowards(-1, 0) ? LETTERED : PLAIN;
  }

  double right() {
    return leavesTowards(1, 0) ? LETTERED : PLAIN;
  }

  double top() {
    return leavesTowards(0, 1) ? TOP_LETTERED : TOP;
  }

  /** Extra paper between the part and what stands below it. */
  double bottom() {
    return leavesTowards(0, -1) ? BOTTOM_LETTERED : 24;
  }

  private boolean leavesTowards(int x, int y) {
    return edges.stream().filter(e -> e.peak() != 0).anyMatch(e -> leaves(e, x, y));
  }

  private boolean leaves(FormedEdge edge, int x, int y) {
    int i = edge.peakIndex();
    Point at = edge.contour().points().get(i);
    Point off = edge.contour().offset(i, 1);
    double leans = x * (off.xMm() - at.xMm()) + y * (off.yMm() - at.yMm());
    double fromLeft = (at.xMm() - plan.minX()) / Math.max(1, plan.width());
    double fromFoot = (at.yMm() - plan.minY()) / Math.max(1, plan.height());
    double toSide = x > 0 ? 1 - fromLeft : x < 0 ? fromLeft : y > 0 ? 1 - fromFoot : fromFoot;
    return leans > LEANS && toSide < NEAR;
  }
}
