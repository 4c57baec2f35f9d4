package dev.flangewright.parts;

import dev.flangewright.forming.FormingException;
import dev.flangewright.forming.FormingInput;
import dev.flangewright.forming.Station;
import dev.flangewright.forming.SvgPathException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Turns a drawn path into the lines of a contour, to be looked at before they are kept. */
public final class ReadPath {

  /** A contour does not depend on the width of its flange. */
  private static final double ANY_WIDTH_MM = 1;

  private ReadPath() {}

  /**
   * What was read.
   *
   * @param lines one station a line: {@code station, x, y, bend angle[, width]}, to 0.001 mm
   */
  public record Read(DrawnContour drawn, String lines) {}

  /**
   * @throws DrawingRefused if something written cannot be taken or the path makes no contour
   */
  public static Read of(PathEntry written) {
    Faults faults = new Faults();
    Written spacing =
        faults.number("spacing_mm", written.spacingMm(), FormingInput.STATION_SPACING);
    Written angle =
        faults.number("bend_angle_deg", written.bendAngleDeg(), FormingInput.BEND_ANGLE);
    Written width = faults.perhapsNumber("width_mm", written.widthMm(), FormingInput.STATION_WIDTH);
    YAxis yAxis = yAxis(written.yAxis(), faults);
    faults.refuseIfAny();
    try {
      DrawnContour drawn =
          DrawnContour.of(
              written.path(),
              spacing.value(),
              angle.value(),
              width == null ? ANY_WIDTH_MM : width.value(),
              yAxis,
              written.reversed());
      String end = ", " + angle + (width == null ? "" : ", " + width);
      return new Read(
          drawn,
          drawn.contour().stations().stream()
              .map(station -> line(station) + end)
              .collect(Collectors.joining("\n")));
    } catch (SvgPathException | FormingException refusal) {
      faults.add("path", "", said(refusal));
      throw new DrawingRefused(faults.list());
    }
  }

  /** Without the field's name, which the fault says already. */
  private static String said(RuntimeException refusal) {
    return String.valueOf(refusal.getMessage()).replaceFirst("^path, ", "");
  }

  private static String line(Station station) {
    return station.number() + ", " + thousandths(station.xMm()) + ", " + thousandths(station.yMm());
  }

  /** Without a minus before nothing. */
  private static String thousandths(double mm) {
    return String.format(Locale.ROOT, "%.3f", Math.rint(mm * 1000) / 1000 + 0.0);
  }

  private static YAxis yAxis(String name, Faults faults) {
    return Arrays.stream(YAxis.values())
        .filter(axis -> axis.name().equals(name))
        .findFirst()
        .orElseGet(
            () -> {
              faults.add("y_axis", name, "choose which way y grows");
              return YAxis.DOWN;
            });
  }
}
