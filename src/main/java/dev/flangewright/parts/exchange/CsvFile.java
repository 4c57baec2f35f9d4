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
          "working_width_mm",
          "fit_tolerance_mm"),
      "fit_tolerance_mm",
      false),
  CONTOURS(
      "contours.csv",
      1_500_000,
      List.of("part_number", "flange", "station", "x_mm", "y_mm", "bend_angle_deg", "width_mm"),
      "width_mm",
      true);

  private final String fileName;
  private final int mostRows;
  private final List<String> columns;
  private final String mayBeMissing;
  private final boolean usuallyWhole;

  CsvFile(
      String fileName,
      int mostRows,
      List<String> columns,
      String mayBeMissing,
      boolean usuallyWhole) {
    this.fileName = fileName;
    this.mostRows = mostRows;
    this.columns = columns;
    this.mayBeMissing = mayBeMissing;
    this.usuallyWhole = usuallyWhole;
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

  /**
   * Whether a file may do without this column: no station then has a width of its own, and the
   * tolerance of a flange stays as it is.
   */
  boolean mayLack(String column) {
    return column.equals(mayBeMissing);
  }

  /** The columns of a file that nobody wrote before, without one that is seldom needed. */
  List<String> usualColumns() {
    return usuallyWhole ? columns : columns.stream().filter(c -> !mayLack(c)).toList();
  }
}
