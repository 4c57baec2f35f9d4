package dev.flangewright.parts.exchange;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Writes the two files of an invented hull of any size: each part has an outer flange on a circle
 * and an inner one on an ellipse.
 */
final class LargeRegister {

  private static final int PARTS_A_FRAME = 50;

  private LargeRegister() {}

  static void write(Path register, Path contours, int parts, int stations) throws IOException {
    try (Writer rows = Files.newBufferedWriter(register);
        Writer points = Files.newBufferedWriter(contours)) {
      rows.write(Loft.REGISTER_HEADER + "\n");
      points.write(Loft.CONTOURS_HEADER + "\n");
      for (int part = 0; part < parts; part++) {
        String number = String.format(Locale.ROOT, "TW-L%05d", part);
        rows.write(row(number, part, "outer,shrink") + "\n" + row(number, part, "inner,stretch"));
        rows.write("\n");
        double radius = 500 + part % PARTS_A_FRAME;
        for (int i = 0; i < stations; i++) {
          points.write(station(number, "outer", i, 60.0 * i / (stations - 1), radius, radius));
        }
        for (int i = 0; i < stations; i++) {
          double degrees = 60.0 - 60.0 * i / (stations - 1);
          points.write(station(number, "inner", i, degrees, radius - 80, radius - 60));
        }
      }
    }
  }

  private static String row(String number, int part, String flange) {
    int frame = part / PARTS_A_FRAME;
    return String.format(
        Locale.ROOT,
        "%s,F%03d,%d.0,S%d,none,TW-%04d,A,2024,T3,1.20,4.8,BS-%05d,%s,18.0,22.50",
        number,
        frame,
        frame * 250,
        part % PARTS_A_FRAME,
        frame,
        part,
        flange);
  }

  private static String station(
      String number, String flange, int i, double degrees, double xRadius, double yRadius) {
    double angle = Math.toRadians(60 + degrees);
    return String.format(
        Locale.ROOT,
        "%s,%s,%d,%.3f,%.3f,%.1f,%n",
        number,
        flange,
        i + 1,
        xRadius * Math.cos(angle),
        yRadius * Math.sin(angle),
        88 + 0.1 * (i % 20));
  }
}
