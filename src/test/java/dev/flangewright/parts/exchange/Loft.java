package dev.flangewright.parts.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

/** Invented register and contour files; valid as they stand, one difference a test. */
final class Loft {

  static final String REGISTER_HEADER =
      "part_number,frame,frame_position_mm,segment,hand,drawing,drawing_issue,alloy,temper,"
          + "thickness_mm,inside_bend_radius_mm,block_set,flange,flange_kind,finished_width_mm,"
          + "working_width_mm";
  static final String CONTOURS_HEADER =
      "part_number,flange,station,x_mm,y_mm,bend_angle_deg,width_mm";

  private Loft() {}

  static String register(String... rows) {
    return REGISTER_HEADER + "\n" + String.join("\n", rows) + "\n";
  }

  static String contours(List<String> rows) {
    return CONTOURS_HEADER + "\n" + String.join("\n", rows) + "\n";
  }

  /** A row of part {@code number}; outer flange shrinks, inner stretches. */
  static String outer(String number) {
    return number
        + ",F07,3150.0,S3,left,TW-0710,C,2024,T3,1.20,4.8,BS-07-3,outer,shrink,18.0,22.50";
  }

  static String inner(String number) {
    return outer(number).replace("outer,shrink", "inner,stretch");
  }

  /** The same rows with a tolerance each, in a column of their own. */
  static String fitted(String toleranceMm, String... rows) {
    return REGISTER_HEADER
        + ",fit_tolerance_mm\n"
        + String.join("," + toleranceMm + "\n", rows)
        + ","
        + toleranceMm
        + "\n";
  }

  /** An arc of a circle of 500 mm about the origin, counter-clockwise: it turns left. */
  static List<String> outerArc(String number, int stations) {
    return arc(number, "outer", 500, stations, i -> i);
  }

  /** An arc of 430 mm, clockwise: it turns right, the web lies outside, to its left. */
  static List<String> innerArc(String number, int stations) {
    return arc(number, "inner", 430, stations, i -> stations - 1 - i);
  }

  private static List<String> arc(
      String number, String flange, double radius, int stations, IntFunction<Integer> step) {
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < stations; i++) {
      double angle = Math.toRadians(60.0 + 60.0 * step.apply(i) / (stations - 1));
      rows.add(
          String.format(
              Locale.ROOT,
              "%s,%s,%d,%.2f,%.2f,%.1f,",
              number,
              flange,
              i + 1,
              radius * Math.cos(angle),
              radius * Math.sin(angle),
              88 + 0.1 * i));
    }
    return rows;
  }

  /** Both flanges' rows. */
  static List<String> arcs(String number) {
    List<String> rows = new ArrayList<>(outerArc(number, 9));
    rows.addAll(innerArc(number, 9));
    return rows;
  }
}
