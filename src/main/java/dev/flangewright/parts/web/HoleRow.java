package dev.flangewright.parts.web;

import dev.flangewright.parts.WrittenHole;

/** A hole as the part sheet lists it; lengths in mm as they were written. */
record HoleRow(String label, String kind, String x, String y, String diameter) {

  static HoleRow of(WrittenHole hole) {
    return new HoleRow(
        hole.label(),
        hole.kind().label(),
        hole.xMm().text(),
        hole.yMm().text(),
        hole.diameterMm().text());
  }
}
