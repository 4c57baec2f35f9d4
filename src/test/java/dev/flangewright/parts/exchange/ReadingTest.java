package dev.flangewright.parts.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.materials.Thickness;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.core.io.ByteArrayResource;

/** What is refused in the files by themselves, and in which words. */
class ReadingTest {

  private static final Map<String, Double> THICKNESSES =
      Map.of("1.20", 1.2, "20 SWG", 0.9144, "0.036 in", 0.9144, "12", 12.0);

  @Test
  void a_good_register_and_its_contours_have_no_problem() {
    assertThat(
            problems(
                Loft.register(Loft.outer("TW-F07-S3L"), Loft.inner("TW-F07-S3L")),
                Loft.contours(Loft.arcs("TW-F07-S3L"))))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          part_number            | ``              | part_number must not be empty
          part_number            | =2+3            | part_number must not begin with = + - @ or a tab: a spreadsheet would take it for a formula
          part_number            | @SUM(A1)        | part_number must not begin with = + - @ or a tab: a spreadsheet would take it for a formula
          part_number            | ` TW-1`         | part_number must not begin or end with a blank
          block_set              | `BS-07 `        | block_set must not begin or end with a blank
          segment                | -3              | segment must not begin with = + - @ or a tab: a spreadsheet would take it for a formula
          frame                  | ``              | frame must not be empty
          frame_position_mm      | 3.15 m          | frame_position_mm must be a plain number from -100000 to 100000, in millimetres, with a point and without a unit, such as 12.50
          frame_position_mm      | 100000.5        | frame_position_mm must be from -100000 to 100000
          frame_position_mm      | =1+1            | frame_position_mm must be a number, not a formula or a sign
          hand                   | Left            | hand must be one of left, right, none, in small letters
          alloy                  | ``              | alloy must not be empty
          temper                 | ``              | temper must not be empty
          thickness_mm           | 18 gauge        | thickness_mm must be millimetres such as 1.2, a gauge such as 20 SWG, or inches such as 0.036 in, and from 0.1 to 10 mm
          thickness_mm           | 12              | thickness_mm must be from 0.1 to 10 mm
          inside_bend_radius_mm  | NaN             | inside_bend_radius_mm must be a plain number from 0 to 100, in millimetres, with a point and without a unit, such as 12.50
          inside_bend_radius_mm  | Infinity        | inside_bend_radius_mm must be a plain number from 0 to 100, in millimetres, with a point and without a unit, such as 12.50
          inside_bend_radius_mm  | -1              | inside_bend_radius_mm must be from 0 to 100
          flange                 | ``              | flange must not be empty
          flange_kind            | SHRINK          | flange_kind must be one of shrink, stretch, plain, mixed, in small letters
          finished_width_mm      | 18 mm           | finished_width_mm must be a plain number above 0 and at most 500, in millimetres, with a point and without a unit, such as 12.50
          finished_width_mm      | 0               | finished_width_mm must be above 0 and at most 500
          working_width_mm       | 22,5            | working_width_mm must be a plain number above 0 and at most 500, in millimetres, with a point and without a unit, such as 12.50
          working_width_mm       | 17.9            | working_width_mm must be at least finished_width_mm, 18.0: the flange is trimmed after forming, not before
          working_width_mm       | 2e1             | working_width_mm must be a plain number above 0 and at most 500, in millimetres, with a point and without a unit, such as 12.50
          """)
  void a_bad_cell_of_the_register_is_refused_by_name(String column, String value, String reason) {
    List<Problem> problems = problems(registerWith(column, value), null);

    assertThat(problems)
        .contains(new Problem("register.csv", 2, column, value, reason))
        .allMatch(problem -> problem.line() == 2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          flange          | ``       | flange must not be empty
          station         | 1.5      | station must be a whole number from 0 to 999999999, without leading zeros
          station         | 01       | station must be a whole number from 0 to 999999999, without leading zeros
          x_mm            | Infinity | x_mm must be a plain number from -100000 to 100000, in millimetres, with a point and without a unit, such as 12.50
          x_mm            | 200000   | x_mm must be from -100000 to 100000
          y_mm            | ``       | y_mm must not be empty
          bend_angle_deg  | 165      | bend_angle_deg must be above 0 and below 165
          bend_angle_deg  | 0        | bend_angle_deg must be above 0 and below 165
          bend_angle_deg  | 90°      | bend_angle_deg must be a plain number above 0 and below 165, in degrees, with a point and without a unit, such as 12.50
          width_mm        | 501      | width_mm must be above 0 and at most 500
          """)
  void a_bad_cell_of_a_station_is_refused_by_name(String column, String value, String reason) {
    List<String> rows = Loft.outerArc("TW-1", 5);
    rows.set(0, with(Loft.CONTOURS_HEADER, rows.get(0), column, value));

    assertThat(problems(null, Loft.contours(rows)))
        .containsExactly(new Problem("contours.csv", 2, column, value, reason));
  }

  @Test
  void all_problems_of_a_row_are_found_at_once() {
    String row = Loft.outer("TW-1").replace("left", "port").replace("shrink", "fold");

    assertThat(problems(Loft.register(row), null))
        .extracting(Problem::column)
        .containsExactly("hand", "flange_kind");
  }

  @Test
  void a_text_longer_than_its_column_is_refused() {
    assertThat(problems(registerWith("drawing_issue", "C".repeat(31)), null))
        .extracting(Problem::reason)
        .containsExactly("drawing_issue must have at most 30 characters, not 31");
  }

  @Test
  void control_characters_are_refused_and_made_visible() {
    assertThat(problems(registerWith("alloy", "20\u000024"), null))
        .contains(
            new Problem(
                "register.csv",
                2,
                "alloy",
                "20\u00b724",
                "alloy must not hold control characters"));
    assertThat(problems(registerWith("drawing", "TW\u202e-1"), null)).hasSize(1);
  }

  @Test
  void a_text_may_break_its_line_but_a_name_may_not() {
    assertThat(problems(registerWith("segment", "\"S3\nupper\""), null)).isEmpty();
    assertThat(problems(registerWith("part_number", "\"TW\n1\""), null))
        .extracting(Problem::reason)
        .containsExactly("part_number must not hold control characters");
  }

  @Test
  void a_line_number_counts_the_lines_of_the_file_not_the_rows() {
    String two = registerWith("segment", "\"S3\nupper\"") + Loft.outer("TW-2").replace("left", "x");

    assertThat(problems(two, null)).extracting(Problem::line).containsExactly(4);
  }

  @Test
  void html_in_a_name_is_data() {
    assertThat(problems(registerWith("segment", "<script>alert(1)</script>"), null)).isEmpty();
  }

  @Test
  void missing_unknown_and_repeated_columns_are_named() {
    String header =
        Loft.REGISTER_HEADER.replace("temper", "alloy").replace("thickness_mm", "thickness_in");

    assertThat(problems(header + "\n", null))
        .extracting(Problem::column, Problem::reason)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple("alloy", "the column stands twice in the header"),
            org.assertj.core.groups.Tuple.tuple(
                "thickness_in",
                "there is no such column; write names and units as in the description of the files"),
            org.assertj.core.groups.Tuple.tuple("temper", "the column is missing"),
            org.assertj.core.groups.Tuple.tuple("thickness_mm", "the column is missing"));
  }

  @Test
  void the_two_files_taken_for_each_other_are_told_apart() {
    assertThat(problems(Loft.contours(List.of()), null))
        .extracting(Problem::reason)
        .contains("this is a column of contours.csv");
  }

  @Test
  void semicolons_between_columns_are_refused() {
    assertThat(problems(Loft.REGISTER_HEADER.replace(',', ';'), null))
        .extracting(Problem::reason)
        .contains("columns must be separated by commas");
  }

  @Test
  void an_empty_file_is_refused() {
    assertThat(problems("", null))
        .extracting(Problem::reason)
        .containsExactly("the file is empty; its first line names the columns");
  }

  @Test
  void a_row_that_lacks_cells_is_refused() {
    assertThat(problems(Loft.register("TW-1,F07"), null))
        .extracting(Problem::reason)
        .containsExactly("the row has 2 cells, the header has 16");
  }

  @Test
  void a_flange_may_stand_in_the_register_only_once() {
    String register = Loft.register(Loft.outer("TW-1"), Loft.inner("TW-1"), Loft.outer("TW-1"));

    assertThat(problems(register, null))
        .containsExactly(
            new Problem(
                "register.csv", 4, "flange", "outer", "this flange of TW-1 is already on line 2"));
  }

  @Test
  void rows_of_one_part_must_agree() {
    String register =
        Loft.register(Loft.outer("TW-1"), Loft.inner("TW-1").replace("2024,T3", "2024,T4"));

    assertThat(problems(register, null))
        .containsExactly(
            new Problem(
                "register.csv",
                3,
                "temper",
                "T4",
                "rows of one part must agree; line 2 has \"T3\""));
  }

  @Test
  void a_frame_stands_in_one_place() {
    String register =
        Loft.register(Loft.outer("TW-1"), Loft.outer("TW-2").replace("3150.0", "3151.0"));

    assertThat(problems(register, null))
        .containsExactly(
            new Problem(
                "register.csv",
                3,
                "frame_position_mm",
                "3151.0",
                "frame F07 stands at 3150.0 on line 2"));
  }

  @Test
  void station_numbers_must_rise() {
    List<String> rows = new ArrayList<>(Loft.outerArc("TW-1", 5));
    rows.set(3, rows.get(3).replace("outer,4", "outer,3"));

    assertThat(problems(null, Loft.contours(rows)))
        .containsExactly(
            new Problem(
                "contours.csv",
                5,
                "station",
                "3",
                "station must rise along a flange; the row before has station 3"));
  }

  @Test
  void a_file_that_is_not_utf8_is_refused_at_its_line() {
    byte[] latin =
        Loft.register(Loft.outer("TW-1"), Loft.inner("TW-1").replace("S3", "Spant \u00e4"))
            .getBytes(StandardCharsets.ISO_8859_1);

    assertThat(read(latin, null).problems().inOrder())
        .containsExactly(
            new Problem(
                "register.csv", 3, "", "", "the line is not UTF-8; save the file as UTF-8"));
  }

  @Test
  void a_quotation_mark_left_open_is_refused() {
    assertThat(problems(Loft.register("\"TW-1,F07"), null)).hasSize(1);
    assertThat(problems(registerWith("segment", "3/4\" wide"), null)).hasSize(1);
  }

  @Test
  void a_row_without_an_end_does_not_fill_the_memory() {
    assertThat(problems(Loft.register("\"" + "x".repeat(500_000)), null))
        .extracting(Problem::reason)
        .containsExactly(
            "the row does not end within 200000 characters; is a quotation mark left open");
  }

  @Test
  void only_the_first_problems_are_listed_but_all_are_counted() {
    String[] rows = new String[500];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = Loft.outer("TW-" + i).replace("left", "port");
    }

    Problems problems = read(bytes(Loft.register(rows)), null).problems();

    assertThat(problems.count()).isEqualTo(500);
    assertThat(problems.inOrder()).hasSize(Problems.LISTED);
  }

  @Test
  void contours_may_do_without_the_width_column() {
    String contours =
        Loft.CONTOURS_HEADER.replace(",width_mm", "")
            + "\n"
            + String.join("\n", Loft.outerArc("TW-1", 5)).replaceAll(",(\n|$)", "$1");

    assertThat(problems(null, contours)).isEmpty();
  }

  private static String registerWith(String column, String value) {
    return Loft.register(with(Loft.REGISTER_HEADER, Loft.outer("TW-1"), column, value));
  }

  private static String with(String header, String row, String column, String value) {
    String[] cells = row.split(",", -1);
    boolean bare = value.indexOf(',') < 0;
    cells[List.of(header.split(",", -1)).indexOf(column)] = bare ? value : "\"" + value + "\"";
    return String.join(",", cells);
  }

  private static List<Problem> problems(@Nullable String register, @Nullable String contours) {
    return read(
            register == null ? null : bytes(register), contours == null ? null : bytes(contours))
        .problems()
        .inOrder();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static FilesRead read(byte @Nullable [] register, byte @Nullable [] contours) {
    RegisterFiles files =
        new RegisterFiles(
            register == null ? null : new ByteArrayResource(register),
            contours == null ? null : new ByteArrayResource(contours));
    return FilesRead.of(
        files,
        written ->
            Optional.ofNullable(THICKNESSES.get(written)).map(mm -> new Thickness(written, mm)),
        Progress.UNSEEN);
  }
}
