package dev.flangewright.parts.web;

import static org.assertj.core.api.Assertions.assertThat;
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

import dev.flangewright.parts.Flange;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.SampleRegister;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import dev.flangewright.testing.StatementCount;
import jakarta.persistence.EntityManagerFactory;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@DatabaseTest
class RegisterPagesTest {

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts accounts;
  @Autowired Parts parts;
  @Autowired EntityManagerFactory factory;
  @Autowired JdbcClient jdbc;

  private SampleRegister sample;
  private String name;
  private long build;
  private long part;

  @BeforeEach
  void aBuildWithAPart(@Autowired ApplicationContext application) {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "a long enough one");
    }
    sample = new SampleRegister(application);
    name = "Build " + UUID.randomUUID();
    build = sample.build(name);
    part = sample.part(build, "P-1");
  }

  @Test
  void the_list_of_builds_counts_what_is_in_them() throws Exception {
    read("/builds")
        .andExpect(
            content().string(allOf(containsString(name), containsString("/builds/" + build))));
    read("/builds/" + build + "/frames")
        .andExpect(content().string(allOf(containsString("F1"), containsString("1000"))));
  }

  @Test
  void a_build_is_made_and_named_anew() throws Exception {
    String other = "Build " + UUID.randomUUID();
    as(Role.LEAD, post("/builds/new").param("name", other).param("note", "found in a barn"))
        .andExpect(status().is3xxRedirection());
    as(
            Role.LEAD,
            post("/builds/" + build + "/edit")
                .param("version", "0")
                .param("name", name + " II")
                .param("note", ""))
        .andExpect(redirectedUrl("/builds/" + build + "/parts"));
    read("/builds")
        .andExpect(
            content()
                .string(allOf(containsString("found in a barn"), containsString(name + " II"))));
  }

  @Test
  void who_comes_late_with_a_change_sees_what_was_typed_and_that_somebody_was_faster()
      throws Exception {
    as(
            Role.LEAD,
            post("/builds/" + build + "/edit")
                .param("version", "7")
                .param("name", "typed by me")
                .param("note", ""))
        .andExpect(status().isConflict())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Somebody changed this build"),
                        containsString("typed by me"))));
  }

  @Test
  void the_register_shows_figures_risk_and_state_of_a_part() throws Exception {
    read("/builds/" + build + "/parts")
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("P-1"),
                        containsString("gather"),
                        containsString("shrink"),
                        containsString("Not begun"),
                        containsString("crack in the bend"))));
  }

  @Test
  void a_filter_that_fits_no_part_says_so() throws Exception {
    read("/builds/" + build + "/parts?q=no-such-part")
        .andExpect(content().string(containsString("0 of 1 parts")));
    read("/builds/" + build + "/parts?q=p-1&frame=F1&order=RISK")
        .andExpect(content().string(containsString("/parts/" + part)));
  }

  @Test
  void a_page_holds_fifty_parts_and_leads_to_the_next() throws Exception {
    sample.parts(build, 51);
    read("/builds/" + build + "/parts?page=2")
        .andExpect(
            content().string(allOf(containsString("page 2 of 2"), not(containsString("P-002")))));
  }

  @Test
  void the_part_sheet_answers_with_drawing_figures_sources_and_caution() throws Exception {
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Will this edge go round?"),
                        containsString("<svg"),
                        containsString("Blank beyond the tangent line"),
                        containsString("Trimmed to 18 mm first"),
                        containsString("closed by its chord"),
                        containsString("They approve nothing"),
                        containsString("href=\"#FM-DEV\""))));
  }

  @Test
  void the_part_sheet_tells_how_an_edge_is_taken_down_and_which_way_the_grain_runs()
      throws Exception {
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("How is it taken down?"),
                        containsString("computed, not published"),
                        containsString("working, 22.0 mm"),
                        containsString("in zones of 50 mm"),
                        containsString("0 to 50"),
                        containsString("Grain, where the drawing leaves it open: best at"),
                        containsString("href=\"#FM-PLAN\""),
                        containsString("href=\"#FM-ZONE\""),
                        containsString("href=\"#FM-TRIM\""),
                        containsString("href=\"#FM-GRAIN\""))));
  }

  @Test
  void without_a_uniform_strain_there_is_no_advice_on_softening() throws Exception {
    as(
            Role.LEAD,
            typedPart("/parts/" + part + "/edit", "P-1", "6061", "T99").param("version", version()))
        .andExpect(redirectedUrl("/parts/" + part));
    read("/parts/" + part)
        .andExpect(content().string(containsString("gives no advice on softening")));
  }

  /** 6061-T6 with an exponent of 0.05 in the table: 40 mm round a radius of 500 takes more. */
  @Test
  void a_metal_that_is_soon_used_up_is_softened_where_the_process_sheet_allows() throws Exception {
    as(
            Role.LEAD,
            typedPart("/parts/" + part + "/edit", "P-1", "6061", "T6").param("version", version()))
        .andExpect(redirectedUrl("/parts/" + part));
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("No softening needed by these figures"),
                        containsString("uniform strain, 5.0\u00A0% ("),
                        containsString("from memory: check before relying on it)"),
                        not(containsString("soften first")),
                        not(containsString("two sets of blocks are advised")))));
    String lines = String.join("\n", SampleRegister.shrinkingLines());
    as(Role.LEAD, typedFlange(flange().id(), "shrink", lines, "40"))
        .andExpect(redirectedUrl("/parts/" + part));
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("soften first"),
                        containsString("only where the drawing and the process sheet allow it"),
                        containsString("two sets of blocks are advised"))));
  }

  @Test
  void a_part_that_cannot_be_figured_says_why_and_can_still_be_edited() throws Exception {
    jdbc.sql("update part set thickness = 'thick' where id = ?").param(part).update();
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("The figures cannot be computed"),
                        containsString("thickness_mm cannot be read"),
                        containsString("Edit the drawing"),
                        not(containsString("What is known of the metal")))));
  }

  @Test
  void a_metal_that_no_table_has_leaves_its_figures_unknown_and_says_which() throws Exception {
    as(
            Role.LEAD,
            typedPart("/parts/" + part + "/edit", "P-1", "unheard-of").param("version", version()))
        .andExpect(redirectedUrl("/parts/" + part));
    read("/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Only half an answer"),
                        containsString("no table gives it"),
                        containsString("Without it: the mass of the blank cannot be told"))));
  }

  @Test
  void the_name_by_which_files_know_a_thing_is_asked_for_once() throws Exception {
    read("/parts/" + part + "/flanges/" + flange().id() + "/edit")
        .andExpect(content().string(not(containsString("id=\"flange\""))));
    read("/parts/" + part + "/flanges/new")
        .andExpect(content().string(containsString("id=\"flange\"")));
    read("/parts/" + part + "/edit")
        .andExpect(content().string(not(containsString("id=\"partNumber\""))));
  }

  @Test
  void html_in_a_name_is_shown_and_never_run() throws Exception {
    String evil = "<script>alert(1)</script>";
    long id = sample.part(build, evil);
    for (String page :
        List.of("/parts/" + id, "/builds/" + build + "/parts", "/parts/" + id + "/edit")) {
      read(page)
          .andExpect(
              content().string(allOf(containsString("&lt;script&gt;"), not(containsString(evil)))));
    }
  }

  @Test
  void a_part_is_entered_and_a_second_of_its_number_is_refused() throws Exception {
    as(Role.MANAGER, typedPart("/builds/" + build + "/parts/new", "P-9"))
        .andExpect(status().is3xxRedirection());
    as(Role.MANAGER, typedPart("/builds/" + build + "/parts/new", "P-9"))
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("already a part &quot;P-9&quot;")));
  }

  @Test
  void a_field_out_of_range_is_named_beside_it_and_nothing_is_stored() throws Exception {
    as(
            Role.LEAD,
            typedPart("/parts/" + part + "/edit", "P-1")
                .param("version", version())
                .param("segment", "changed"))
        .andExpect(redirectedUrl("/parts/" + part));
    String before = version();
    as(
            Role.LEAD,
            post("/parts/" + part + "/edit")
                .with(csrf())
                .param("version", before)
                .param("partNumber", "P-1")
                .param("frame", "F1")
                .param("hand", "left")
                .param("alloy", "2024")
                .param("temper", "O")
                .param("thicknessMm", "12")
                .param("insideBendRadiusMm", "3"))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("it must be from 0.1 to 10")));
    assertThat(version()).isEqualTo(before);
  }

  @Test
  void a_contour_is_taken_whole_or_not_at_all() throws Exception {
    long flange = flange().id();
    String lines = String.join("\n", SampleRegister.shrinkingLines());
    as(Role.LEAD, typedFlange(flange, "stretch", lines))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("shrink of radius 500.0 mm")));
    as(Role.LEAD, typedFlange(flange, "shrink", lines.replaceFirst("90", "190")))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("line 1, bend_angle_deg")));
    as(Role.LEAD, typedFlange(flange, "shrink", lines.replaceFirst("90", "85")))
        .andExpect(redirectedUrl("/parts/" + part));
    assertThat(flange().stations().list().get(0).bendAngleDeg().text()).isEqualTo("85");
  }

  @Test
  void a_flange_wider_than_its_contour_allows_is_refused_with_the_station() throws Exception {
    as(
            Role.LEAD,
            post("/parts/" + part + "/flanges/new")
                .param("flange", "inner")
                .param("flangeKind", "stretch")
                .param("finishedWidthMm", "200")
                .param("workingWidthMm", "200")
                .param("edgeCondition", "POLISHED")
                .param("stations", tightStretch()))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("wider than its contour allows")));
    assertThat(parts.whole(part).orElseThrow().flange("inner")).isEmpty();
  }

  @Test
  void a_flange_and_a_part_nobody_worked_on_are_struck_out() throws Exception {
    as(
            Role.LEAD,
            post("/parts/" + part + "/flanges/" + flange().id() + "/remove")
                .param("version", Long.toString(flange().version())))
        .andExpect(redirectedUrl("/parts/" + part));
    read("/parts/" + part).andExpect(content().string(containsString("no flange has a contour")));
    as(Role.LEAD, post("/parts/" + part + "/remove").param("version", version()))
        .andExpect(redirectedUrl("/builds/" + build + "/parts"));
    assertThat(parts.findById(part)).isEmpty();
  }

  @Test
  void a_guest_reads_and_does_not_edit() throws Exception {
    as(Role.GUEST, get("/parts/" + part))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString("Edit the drawing"))));
    as(Role.GUEST, get("/parts/" + part + "/edit")).andExpect(status().isForbidden());
    as(Role.GUEST, typedPart("/builds/" + build + "/parts/new", "P-8"))
        .andExpect(status().isForbidden());
    assertThat(parts.findByBuildIdAndPartNumber(build, "P-8")).isEmpty();
  }

  @Test
  void the_tables_of_metals_stand_with_their_sources() throws Exception {
    read("/materials?alloy=2024")
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("2024-O"),
                        containsString("Known by"),
                        not(containsString("6061-T6")))));
  }

  @Test
  void statements_do_not_grow_with_the_number_of_parts() throws Throwable {
    long small = sample.build("Small " + UUID.randomUUID());
    long large = sample.build("Large " + UUID.randomUUID());
    sample.parts(small, 60);
    sample.parts(large, 600);
    for (String page : List.of("/builds/%d/parts", "/builds/%d/parts?order=RISK&page=2")) {
      long few = statements(page.formatted(small));
      assertThat(few).isPositive();
      assertThat(statements(page.formatted(large))).isEqualTo(few);
    }
    long sheet = statements("/parts/" + id(small));
    assertThat(sheet).isPositive();
    assertThat(statements("/parts/" + id(large))).isEqualTo(sheet);
  }

  private long statements(String page) throws Throwable {
    read(page);
    return StatementCount.of(factory, () -> read(page));
  }

  private long id(long ofBuild) {
    return parts.findByBuildIdAndPartNumber(ofBuild, "P-050").orElseThrow().id();
  }

  private ResultActions read(String page) throws Exception {
    return as(Role.LEAD, get(java.net.URI.create(page))).andExpect(status().isOk());
  }

  private ResultActions as(Role role, MockHttpServletRequestBuilder request) throws Exception {
    String[] may = role.permissions().stream().map(Enum::name).toArray(String[]::new);
    return mvc.perform(
        request
            .with(csrf())
            .with(user(role.word()).authorities(AuthorityUtils.createAuthorityList(may))));
  }

  private String version() {
    return Long.toString(parts.whole(part).orElseThrow().version());
  }

  private Flange flange() {
    return parts.whole(part).orElseThrow().flange("outer").orElseThrow();
  }

  private MockHttpServletRequestBuilder typedFlange(long id, String kind, String lines) {
    return typedFlange(id, kind, lines, "22");
  }

  private MockHttpServletRequestBuilder typedFlange(
      long id, String kind, String lines, String workingWidthMm) {
    return post("/parts/" + part + "/flanges/" + id + "/edit")
        .param("version", Long.toString(flange().version()))
        .param("flange", "outer")
        .param("flangeKind", kind)
        .param("finishedWidthMm", "18")
        .param("workingWidthMm", workingWidthMm)
        .param("edgeCondition", "DEBURRED")
        .param("stations", lines);
  }

  private static MockHttpServletRequestBuilder typedPart(String page, String number) {
    return typedPart(page, number, "2024");
  }

  private static MockHttpServletRequestBuilder typedPart(String page, String number, String alloy) {
    return typedPart(page, number, alloy, "O");
  }

  private static MockHttpServletRequestBuilder typedPart(
      String page, String number, String alloy, String temper) {
    return post(page)
        .param("partNumber", number)
        .param("frame", "F1")
        .param("hand", "left")
        .param("drawing", "D-1")
        .param("drawingIssue", "B")
        .param("alloy", alloy)
        .param("temper", temper)
        .param("thicknessMm", "1.2")
        .param("insideBendRadiusMm", "3")
        .param("blockSet", "BS-1");
  }

  /** A quarter circle of 60 mm radius, travelled to the right. */
  private static String tightStretch() {
    return "1, 0, 60, 90\n2, 22.961, 55.433, 90\n3, 42.426, 42.426, 90\n4, 55.433, 22.961, 90\n"
        + "5, 60, 0, 90";
  }
}
