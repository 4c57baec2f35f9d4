package dev.flangewright.api;

import static dev.flangewright.api.BadInputTest.problem;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.ResultActions;

/** The two files over the wire: previewed, stored, and refused with nothing stored. */
class ImportTest extends ApiTest {

  private static final String REGISTER =
      """
      part_number,frame,frame_position_mm,segment,hand,drawing,drawing_issue,alloy,temper,\
      thickness_mm,inside_bend_radius_mm,block_set,flange,flange_kind,finished_width_mm,\
      working_width_mm
      TW-F07-S3L,F7,3150,S3,left,TW-107,A,2024,T3,1.2,4,B7,outer,shrink,18,22
      """;

  /** A quarter of a circle of 500 mm, turning left. */
  private static final String CONTOURS =
      "part_number,flange,station,x_mm,y_mm,bend_angle_deg\n" + arc();

  private long build;

  @BeforeEach
  void anEmptyBuild() {
    build = workshop.build().id();
  }

  @Test
  void a_preview_tells_what_would_come_and_stores_nothing() throws Exception {
    take("lead", REGISTER, CONTOURS, true)
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.stored").value(false))
        .andExpect(jsonPath("$.newParts[0]").value("TW-F07-S3L"));
    nothingIsStored();
  }

  @Test
  void an_import_is_stored_once_and_figured() throws Exception {
    take("lead", REGISTER, CONTOURS, false)
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.stored").value(true))
        .andExpect(jsonPath("$.register.added").value(1));
    take("lead", REGISTER, CONTOURS, false)
        .andExpect(jsonPath("$.stored").value(false))
        .andExpect(jsonPath("$.register.unchanged").value(1));
    read("guest", "/builds/" + build + "/parts")
        .andExpect(jsonPath("$.totalItems").value(1))
        .andExpect(jsonPath("$.items[0].figures.flanges[0].kind").value("SHRINK"))
        .andExpect(jsonPath("$.items[0].figures.flanges[0].gatherMm").isNumber());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "thickness_mm | ,1.2,4, | ,0.047in,4,",
        "thickness_mm | ,1.2,4, | ,47,4,",
        "working_width_mm | ,18,22 | ,18,NaN",
        "finished_width_mm | ,18,22 | ,-18,22",
        "flange_kind | ,shrink, | ,stretch,",
        "working_width_mm | ,18,22 | ,18,501",
        "hand | ,left, | ,port,"
      })
  void a_bad_row_is_named_and_nothing_is_stored(String column, String good, String bad)
      throws Exception {
    for (boolean dryRun : new boolean[] {true, false}) {
      problem(422, take("lead", REGISTER.replace(good, bad), CONTOURS, dryRun))
          .andExpect(jsonPath("$.problems[0].file").value("register.csv"))
          .andExpect(jsonPath("$.problems[0].line").value(2))
          .andExpect(jsonPath("$.problems[0].column").value(column))
          .andExpect(jsonPath("$.field").value(column));
    }
    nothingIsStored();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {",90.0 | ,165.0", ",90.0 | ,0", ",90.0 | ,NaN", ",90.0 | ,=1+89"})
  void a_bad_angle_is_named_and_nothing_is_stored(String good, String bad) throws Exception {
    problem(422, take("lead", REGISTER, CONTOURS.replace(good, bad), false))
        .andExpect(jsonPath("$.problems[0].file").value("contours.csv"))
        .andExpect(jsonPath("$.problems[0].column").value("bend_angle_deg"));
    nothingIsStored();
  }

  @Test
  void a_missing_column_is_named() throws Exception {
    String without = REGISTER.replace(",alloy", "").replace(",2024", "");
    problem(422, take("lead", without, CONTOURS, false))
        .andExpect(jsonPath("$.detail", containsString("alloy")));
    nothingIsStored();
  }

  @Test
  void a_flange_named_twice_is_refused() throws Exception {
    String twice = REGISTER + REGISTER.lines().skip(1).findFirst().orElseThrow() + "\n";
    problem(422, take("lead", twice, CONTOURS, false))
        .andExpect(jsonPath("$.problems[0].line").value(3));
    nothingIsStored();
  }

  @Test
  void a_contour_that_crosses_itself_is_refused() throws Exception {
    String crossing =
        """
        part_number,flange,station,x_mm,y_mm,bend_angle_deg
        TW-F07-S3L,outer,1,0,0,90
        TW-F07-S3L,outer,2,100,100,90
        TW-F07-S3L,outer,3,100,0,90
        TW-F07-S3L,outer,4,0,100,90
        """;
    problem(422, take("lead", REGISTER, crossing, false))
        .andExpect(jsonPath("$.detail", containsString("crosses")));
    nothingIsStored();
  }

  @Test
  void html_in_a_name_is_kept_as_text() throws Exception {
    String script = REGISTER.replace(",S3,", ",<b>S3</b>,");
    take("lead", script, CONTOURS, false).andExpect(status().isOk());
    read("guest", "/builds/" + build + "/parts")
        .andExpect(jsonPath("$.items[0].segment").value("<b>S3</b>"));
  }

  @Test
  void an_import_without_files_or_into_no_build_is_refused() throws Exception {
    problem(422, mvc.perform(multipart(address()).with(account("lead"))));
    build = 999_999;
    problem(404, take("lead", REGISTER, CONTOURS, false));
  }

  @Test
  void only_who_may_edit_the_register_imports() throws Exception {
    problem(403, take("fitter", REGISTER, CONTOURS, false));
    problem(403, take("guest", REGISTER, CONTOURS, true));
  }

  private void nothingIsStored() throws Exception {
    read("guest", "/builds/" + build + "/parts").andExpect(jsonPath("$.totalItems").value(0));
  }

  private ResultActions take(String who, String register, String contours, boolean dryRun)
      throws Exception {
    return mvc.perform(
        multipart(address())
            .file(file("register", register))
            .file(file("contours", contours))
            .param("dryRun", Boolean.toString(dryRun))
            .with(account(who)));
  }

  private String address() {
    return "/api/v1/builds/" + build + "/import";
  }

  private static MockMultipartFile file(String name, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return new MockMultipartFile(name, name + ".csv", "text/csv", bytes);
  }

  private static String arc() {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i <= 18; i++) {
      double angle = Math.toRadians(5.0 * i);
      rows.append(
          String.format(
              Locale.ROOT,
              "TW-F07-S3L,outer,%d,%.3f,%.3f,90.0\n",
              i + 1,
              500 * Math.cos(angle),
              500 * Math.sin(angle)));
    }
    return rows.toString();
  }
}
