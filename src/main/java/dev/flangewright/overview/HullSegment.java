package dev.flangewright.overview;

import dev.flangewright.drawing.SegmentState;
import dev.flangewright.drawing.Spot;
import java.util.List;

/**
 * A segment as it stands in the drawing of the hull.
 *
 * @param framePositionMm of its frame along the hull
 * @param edges its flange contours in the frame's plane, mm, y up, in any order; a segment without
 *     any is counted but not drawn
 * @param share of its stages done, 0 to 1
 * @param stateWord what is read out and shown when pointed at, such as "in work, 4 of 10 stages"
 */
public record HullSegment(
    long partId,
    String partNumber,
    String frameCode,
    double framePositionMm,
    List<List<Spot>> edges,
    SegmentState state,
    double share,
    String stateWord) {

  public HullSegment {
    edges = edges.stream().filter(edge -> edge.size() > 1).map(List::copyOf).toList();
  }

  /**
   * An edge from a stored sketch, {@code "x,y x,y …"} in mm; empty for an empty sketch.
   *
   * @throws NumberFormatException if a coordinate is not a number
   */
  public static List<Spot> edge(String sketch) {
    return sketch.isBlank()
        ? List.of()
        : List.of(sketch.trim().split("\\s+")).stream().map(HullSegment::spot).toList();
  }

  private static Spot spot(String pair) {
    int comma = pair.indexOf(',');
    return new Spot(
        Double.parseDouble(pair.substring(0, comma)),
        Double.parseDouble(pair.substring(comma + 1)));
  }

  boolean isDrawn() {
    return !edges.isEmpty();
  }

  /** Part number and state, as read out. */
  String said() {
    return partNumber + ": " + stateWord;
  }
}
