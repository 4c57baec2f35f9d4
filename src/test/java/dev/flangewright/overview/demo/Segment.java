package dev.flangewright.overview.demo;

import dev.flangewright.forming.FlangeKind;
import dev.flangewright.parts.Hand;

/**
 * One segment of a frame: the mould line from angle {@code fromU} down to {@code toU}, that is
 * counter-clockwise, with its sheet.
 *
 * @param floor whether the inner edge is a straight floor instead of following the skin
 * @param runOut whether the working width narrows towards the end of the outer flange
 */
record Segment(
    LoftedFrame frame,
    String name,
    Hand hand,
    double fromU,
    double toU,
    Metal metal,
    Widths widths,
    boolean floor,
    boolean runOut) {

  /** What it is made of: alloy, temper, thickness as written and inside bend radius, mm. */
  record Metal(String alloy, String temper, String thickness, String insideRadiusMm) {}

  /** Depth of the web, finished and working width of the flanges, mm. */
  record Widths(int webMm, int finishedMm, int workingMm) {}

  String partNumber() {
    String side = hand == Hand.NONE ? "" : hand.name().substring(0, 1);
    return "TW-F%02d-%s%s".formatted(frame.number(), name, side);
  }

  /** One drawing for both hands. */
  String drawing() {
    return "TW-%02d%s0".formatted(frame.number(), name.substring(1));
  }

  String blockSet() {
    return "TW-B%02d-%s".formatted(frame.number(), name);
  }

  FlangeKind outerKind() {
    return frame.keelDropMm() > 0 && Math.abs(toU) > 180 ? FlangeKind.MIXED : FlangeKind.SHRINK;
  }

  FlangeKind innerKind() {
    return floor ? FlangeKind.PLAIN : FlangeKind.STRETCH;
  }
}
