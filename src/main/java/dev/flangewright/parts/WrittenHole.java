package dev.flangewright.parts;

import dev.flangewright.forming.Hole;
import dev.flangewright.forming.HoleKind;

/**
 * A hole in the web as it was written; lengths in mm, in the axes of the contours.
 *
 * @param label unique on its part, without tabs or line breaks
 */
public record WrittenHole(
    String label, HoleKind kind, Written xMm, Written yMm, Written diameterMm) {

  private static final String BETWEEN = "\t";

  String line() {
    return String.join(BETWEEN, label, kind.name(), xMm.text(), yMm.text(), diameterMm.text());
  }

  static WrittenHole ofLine(String line) {
    String[] cells = line.split(BETWEEN, -1);
    return new WrittenHole(
        cells[0],
        HoleKind.valueOf(cells[1]),
        new Written(cells[2]),
        new Written(cells[3]),
        new Written(cells[4]));
  }

  /** The hole to calculate with. */
  public Hole hole() {
    return new Hole(label, kind, xMm.value(), yMm.value(), diameterMm.value());
  }
}
