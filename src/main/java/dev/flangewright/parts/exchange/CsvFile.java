package dev.flangewright.parts.exchange;

import java.util.List;

/** The two files of a register, with their columns in the order they are usually written. */
enum CsvFile {
  REGISTER(
      "register.csv",
      50_000,
      List.of(
          "part_number",
          "frame",
          "frame_position_mm",
          "segment",
          "hand",
          "drawing",
          "drawing_issue",
          "alloy",
          "temper",
          "thickness_mm",
          "inside_bend_radius_mm",
          "block_set",
          "flange",
          "flange_kind",
          "finished_width_mm",
          "working_width_mm")),
  CONTOURS(
      "contours.csv",
      1_500_000,
      List.of("part_number", "flange", "station", "x_mm", "y_mm", "bend_angle_deg", "width_mm"));

  private static final String MAY_BE_MISSING = "width_mm";

  private final String fileName;
  private final int mostRows;
  private final List<String> columns;

  CsvFile(String fileName, int mostRows, List<String> columns) {
    this.fileName = fileName;
    this.mostRows = mostRows;
    this.columns = columns;
  }

  String fileName() {
    return fileName;
  }

  /** More rows than this are refused, so that one file cannot fill the memory. */
  int mostRows() {
    return mostRows;
  }

  List<String> columns() {
    return columns;
  }

  /** Whether a file may do without this column: no station then has a width of its own. */
  boolean mayLack(String column) {
    return this == CONTOURS && column.equals(MAY_BE_MISSING);
  }
}
