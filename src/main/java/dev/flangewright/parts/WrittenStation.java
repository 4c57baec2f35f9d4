package dev.flangewright.parts;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One station of a contour as the loft gave it: x and y of the mould line in the frame's plane (mm,
 * y up), the bend angle from flat (degrees) and, where it differs from the flange's, the working
 * width (mm).
 */
public record WrittenStation(
    int number, Written xMm, Written yMm, Written bendAngleDeg, @Nullable Written widthMm) {

  String line() {
    String width = widthMm == null ? "" : widthMm.text();
    return String.join(
        ",", Integer.toString(number), xMm.text(), yMm.text(), bendAngleDeg.text(), width);
  }

  static WrittenStation ofLine(String line) {
    String[] cells = line.split(",", -1);
    Written width = Optional.of(cells[4]).filter(c -> !c.isEmpty()).map(Written::new).orElse(null);
    return new WrittenStation(
        Integer.parseInt(cells[0]),
        new Written(cells[1]),
        new Written(cells[2]),
        new Written(cells[3]),
        width);
  }
}
