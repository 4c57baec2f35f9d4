package dev.flangewright.parts.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.drawing.Numbers;
import dev.flangewright.forming.FlangeKind;
import dev.flangewright.forming.FlangeSection;
import dev.flangewright.forming.Sheet;
import dev.flangewright.parts.Digitised;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.SampleRegister;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A contour read from a template or taken from a drawn path, from the form to the part sheet. */
@DatabaseTest
class FitPagesTest {

  /** From right to left over the top, as one sees it: a shrink, two corners of 45°. */
  private static final String DRAWN = "M 300 0 L 200 -100 A 400 400 0 0 0 -200 -100 L -300 0";

  private static final String ARCH = "M 433.0127 -250 A 500 500 0 0 0 -433.0127 -250";

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts accounts;
  @Autowired Parts parts;
  @Autowired JdbcClient jdbc;
  @Autowired JsonMapper json;

  private long part;

  @BeforeEach
  void aBuildWithAPart(@Autowired ApplicationContext application) {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "a long enough one");
    }
    SampleRegister sample = new SampleRegister(application);
    part = sample.part(sample.build("Build " + UUID.randomUUID()), "P-1");
  }

  /**
   * The template is an ellipse, so the tightest radius is known from analytic geometry; 40 points
   * within 0.3 mm, tolerance 0.6 mm. On such readings the peak strain errs high by 4 %, at worst 5
   * % (docs/method.md, FM-FIT).
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void a_digitised_template_gives_the_peak_strain_of_the_curve_it_was_made_to(long seed)
      throws Exception {
    as(Role.LEAD, typed("shrink", Digitised.lines(40, seed), "0.60"))
        .andExpect(redirectedUrl("/parts/" + part));
    double truth =
        FlangeSection.of(FlangeKind.SHRINK, Digitised.TIGHTEST_MM, Sheet.of(1.2, 3), 22, 90)
            .edgeStrain();
    JsonNode flange = forming().get("flanges").get(0);
    double peak = flange.get("peakEdgeStrain").asDouble();
    assertThat(peak).isCloseTo(truth, withinPercentage(6));
    JsonNode fit = flange.get("fit");
    assertThat(truth)
        .isBetween(
            fit.get("peakEdgeStrainLow").asDouble(), fit.get("peakEdgeStrainHigh").asDouble());
    assertThat(fit.get("shareWithin").asDouble()).isBetween(0.95, 1.0);
    assertThat(fit.get("stations")).hasSize(40);
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("contour fitted within 0.60"),
                        containsString("How well is the contour known?"),
                        containsString("Farthest off is station " + fit.get("worstStation")),
                        containsString(Numbers.figure(100 * peak, 1) + "\u00A0%"),
                        containsString("as sure as the readings allow"),
                        containsString("class=\"d-band\""),
                        containsString("class=\"d-read\""),
                        containsString("href=\"#FM-FIT\""),
                        containsString("href=\"#FM-BAND\""))));
  }

  @Test
  void stations_taken_as_exact_have_no_deviations_to_show() throws Exception {
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        not(containsString("How well is the contour known?")),
                        not(containsString("contour fitted within")))));
    JsonNode fit = forming().get("flanges").get(0).get("fit");
    assertThat(fit.get("toleranceMm").asDouble()).isZero();
    assertThat(fit.get("maxDeviationMm").asDouble()).isZero();
    assertThat(fit.get("peakEdgeStrainLow").isNull()).isTrue();
    assertThat(fit.get("stations")).isEmpty();
  }

  @Test
  void a_tolerance_is_kept_as_written_and_shown_again() throws Exception {
    as(Role.LEAD, typed("shrink", Digitised.lines(40, 1), "0.60"));
    assertThat(flange().drawn().toleranceText()).isEqualTo("0.60");
    read("/parts/" + part + "/flanges/" + flange().id() + "/edit")
        .andExpect(content().string(containsString("value=\"0.60\"")));
    assertThat(body("/parts/" + part).get("flanges").get(0).get("fitToleranceMm").asDouble())
        .isEqualTo(0.6);
  }

  @Test
  void a_supposition_is_fitted_as_the_drawing_is() throws Exception {
    as(Role.LEAD, typed("shrink", Digitised.lines(40, 1), "0.60"));
    read("/parts/" + part + "/suppose")
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("So far nothing is changed"),
                        containsString("class=\"d-read\""))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5.1", "-0.1", "half"})
  void a_tolerance_that_cannot_be_is_refused_beside_its_field(String tolerance) throws Exception {
    as(Role.LEAD, typed("shrink", Digitised.lines(40, 1), tolerance))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("fit_tolerance_mm &quot;" + tolerance)));
  }

  @Test
  void a_point_that_no_fair_curve_comes_near_is_named_beside_the_tolerance() throws Exception {
    List<String> lines = new ArrayList<>(Digitised.lines(40, 1));
    lines.set(17, "18, 605, -43, 90");
    as(Role.LEAD, typed("shrink", lines, "0.6"))
        .andExpect(status().isUnprocessableContent())
        .andExpect(
            content().string(containsString("fit_tolerance_mm: station 18: toleranceMm is 0.6")));
    assertThat(flange().drawn().toleranceMm()).isZero();
    as(Role.LEAD, typed("shrink", Digitised.lines(40, 1), "0.6"));
    jdbc.sql("update flange set fit_tolerance_mm = '0.01' where part_id = ?").param(part).update();
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("The figures cannot be computed"),
                        containsString("no fair curve comes this near"))));
  }

  @Test
  void corners_are_told_even_where_the_stations_are_exact() throws Exception {
    String path = "M 600 0 L 300 0 L 0 100";
    String lines = lines(as(Role.LEAD, path(path, false)));
    as(Role.LEAD, typed("shrink", lines.lines().toList(), "0"))
        .andExpect(redirectedUrl("/parts/" + part));
    // atan(100/300) = 18.4°, on the screen down to the left: a turn to the left.
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("a corner of 18\u00A0° to the left"),
                        containsString("relieve it there, or follow the drawing"),
                        containsString("href=\"#FM-CORNER\""))));
  }

  @Test
  void a_drawn_path_fills_in_the_contour_and_saves_nothing() throws Exception {
    String before = flange().stations().lines();
    String lines =
        lines(
            as(Role.LEAD, path(ARCH, false))
                .andExpect(status().isOk())
                .andExpect(
                    content()
                        .string(
                            allOf(
                                containsString("54 stations over 1"),
                                containsString("Nothing is saved yet"),
                                containsString("value=\"18\"")))));
    assertThat(lines.lines()).hasSize(54).first().isEqualTo("1, 433.013, 250.000, 90");
    assertThat(flange().stations().lines()).isEqualTo(before);
    as(Role.LEAD, typed("shrink", lines.lines().toList(), "0"))
        .andExpect(redirectedUrl("/parts/" + part));
    assertThat(flange().summary().contourLengthMm()).isCloseTo(1047.2, withinPercentage(0.01));
  }

  @Test
  void a_path_that_makes_another_kind_asks_where_the_web_lies() throws Exception {
    as(Role.LEAD, path(ARCH, true))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("The form says shrink."),
                        containsString("reverse the direction"),
                        containsString("else choose stretch"),
                        containsString("checked=\"checked\""))));
  }

  @Test
  void a_path_that_cannot_be_read_is_shown_again_with_the_place() throws Exception {
    as(Role.LEAD, path("M 0 0 L 100 zero", false))
        .andExpect(status().isUnprocessableContent())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("The path was not read"),
                        containsString("path: character 13"),
                        containsString("M 0 0 L 100 zero"),
                        containsString("value=\"18\""))));
  }

  @Test
  void a_new_flange_may_begin_with_a_path_and_a_guest_may_not() throws Exception {
    MockHttpServletRequestBuilder read =
        drawn(post("/parts/" + part + "/flanges/path?flangeId"), DRAWN, false)
            .param("flange", "inner")
            .param("flangeKind", "shrink");
    as(Role.LEAD, read)
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(allOf(containsString("Add the flange"), containsString("Corners at"))));
    as(Role.GUEST, path(ARCH, false)).andExpect(status().isForbidden());
  }

  private static String lines(ResultActions page) throws Exception {
    String html = page.andReturn().getResponse().getContentAsString();
    int from = html.indexOf('>', html.indexOf("id=\"stations\"")) + 1;
    return html.substring(from, html.indexOf("</textarea>", from)).strip();
  }

  private MockHttpServletRequestBuilder path(String path, boolean reversed) {
    String address = "/parts/" + part + "/flanges/path?flangeId=" + flange().id();
    return drawn(post(address), path, reversed)
        .param("flange", "outer")
        .param("flangeKind", "shrink")
        .param("finishedWidthMm", "18");
  }

  private static MockHttpServletRequestBuilder drawn(
      MockHttpServletRequestBuilder request, String path, boolean reversed) {
    return request
        .param("path", path)
        .param("spacingMm", "20")
        .param("bendAngleDeg", "90")
        .param("widthMm", "")
        .param("yAxis", "DOWN")
        .param("reversed", Boolean.toString(reversed));
  }

  private MockHttpServletRequestBuilder typed(String kind, List<String> lines, String tolerance) {
    return post("/parts/" + part + "/flanges/" + flange().id() + "/edit")
        .param("version", Long.toString(flange().version()))
        .param("flange", "outer")
        .param("flangeKind", kind)
        .param("finishedWidthMm", "18")
        .param("workingWidthMm", "22")
        .param("fitToleranceMm", tolerance)
        .param("edgeCondition", "DEBURRED")
        .param("stations", String.join("\n", lines));
  }

  private JsonNode forming() throws Exception {
    return body("/parts/" + part + "/forming");
  }

  private JsonNode body(String address) throws Exception {
    return json.readTree(read("/api/v1" + address).andReturn().getResponse().getContentAsString());
  }

  private ResultActions read(String page) throws Exception {
    return as(Role.LEAD, get(page)).andExpect(status().isOk());
  }

  private ResultActions as(Role role, MockHttpServletRequestBuilder request) throws Exception {
    String[] may = role.permissions().stream().map(Enum::name).toArray(String[]::new);
    return mvc.perform(
        request
            .with(csrf())
            .with(user(role.word()).authorities(AuthorityUtils.createAuthorityList(may))));
  }

  private Flange flange() {
    return parts.whole(part).orElseThrow().flange("outer").orElseThrow();
  }
}
