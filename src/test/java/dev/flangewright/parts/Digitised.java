package dev.flangewright.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Points read from an elliptic template, 600 by 420 mm, across its tight vertex: unevenly spaced
 * and up to 0.3 mm off in x and in y; as lines to type in, 90° bends.
 */
public final class Digitised {

  /** Radius of the ellipse at its tight vertex, b²/a, mm: analytic geometry. */
  public static final double TIGHTEST_MM = 420.0 * 420 / 600;

  private static final double OFF_MM = 0.3;

  private Digitised() {}

  public static List<String> lines(int stations, long seed) {
    var random = new Random(seed);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < stations; i++) {
      boolean inner = i > 0 && i < stations - 1;
      double step = 1.6 / (stations - 1);
      double u = -0.8 + step * (i + (inner ? random.nextDouble(-0.25, 0.25) : 0));
      double x = 600 * Math.cos(u) + random.nextDouble(-OFF_MM, OFF_MM);
      double y = 420 * Math.sin(u) + random.nextDouble(-OFF_MM, OFF_MM);
      lines.add(String.format(Locale.ROOT, "%d, %.2f, %.2f, 90", i + 1, x, y));
    }
    return lines;
  }
}
