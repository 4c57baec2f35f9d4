package dev.flangewright.parts;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Contours on a circle about the origin, as lines to type in; 90° bends. */
final class Arc {

  private Arc() {}

  /** Travels to the left, so the edge must shrink. */
  static String shrink(double radiusMm, int stations) {
    return lines(radiusMm, stations, +1);
  }

  /** Travels to the right, so the edge must stretch. */
  static String stretch(double radiusMm, int stations) {
    return lines(radiusMm, stations, -1);
  }

  private static String lines(double radiusMm, int stations, int turn) {
    return IntStream.rangeClosed(1, stations)
        .mapToObj(
            number -> {
              double angle = Math.toRadians(90) + turn * (number - 1) * 0.6 / (stations - 1);
              return String.format(
                  Locale.ROOT,
                  "%d, %.4f, %.4f, 90",
                  number,
                  radiusMm * Math.cos(angle),
                  radiusMm * Math.sin(angle));
            })
        .collect(Collectors.joining("\n"));
  }
}
