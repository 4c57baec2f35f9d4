package dev.flangewright.parts.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
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

import dev.flangewright.parts.Part;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.SampleRegister;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.ResultMatcher;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** Holes, cutouts and trim allowance as they are entered and shown. */
@DatabaseTest
class LayoutPagesTest {

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts accounts;
  @Autowired Parts parts;

  private long part;

  @BeforeEach
  void aPart(@Autowired ApplicationContext application) {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "a long enough one");
    }
    SampleRegister sample = new SampleRegister(application);
    part = sample.part(sample.build("Build " + UUID.randomUUID()), "P-1");
  }

  @Test
  void the_form_opens_with_empty_rows_and_only_for_who_may_edit() throws Exception {
    as(Role.LEAD, get(form()))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("name=\"holes[3].xMm\""),
                        containsString("name=\"cutouts[3].fromMm\""),
                        containsString("name=\"trimAllowanceMm\""),
                        containsString("value=\"0\""))));
    as(Role.FITTER, get(form())).andExpect(status().isForbidden());
    as(Role.FITTER, filled()).andExpect(status().isForbidden());
  }

  @Test
  void what_is_entered_comes_back_as_it_was_written_and_stands_on_the_sheet() throws Exception {
    as(Role.LEAD, filled()).andExpect(redirectedUrl("/parts/" + part));
    as(Role.LEAD, get(form()))
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("value=\"-20.50\""),
                        containsString("value=\"T1\""),
                        containsString("value=\"120.0\""),
                        containsString("name=\"holes[4].xMm\""))));
    as(Role.GUEST, get("/parts/" + part))
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("class=\"d-hole\""),
                        containsString(
                            "Cut out of it: from 100 to 120.0 mm, 9 mm deep from the finished edge."),
                        containsString("No relief is credited"),
                        containsString("Fewer than two tooling holes"),
                        containsString("Trim allowance"),
                        containsString("Tilt the saw table"))));
  }

  @Test
  void a_gauge_is_read_between_cutouts_and_its_page_says_so() throws Exception {
    String warning = "The outer edge has cutouts: read between them";
    as(Role.GUEST, get("/parts/" + part + "/gauge"))
        .andExpect(content().string(not(containsString(warning))));
    as(Role.LEAD, filled());
    as(Role.GUEST, get("/parts/" + part + "/gauge"))
        .andExpect(content().string(containsString(warning)));
  }

  @Test
  void an_emptied_row_takes_its_hole_and_cutout_away() throws Exception {
    as(Role.LEAD, filled());
    as(
            Role.LEAD,
            sent(version()).param("holes[0].kind", "TOOLING").param("cutouts[0].flange", "outer"))
        .andExpect(redirectedUrl("/parts/" + part));
    assertThat(stored().holes().list()).isEmpty();
    assertThat(stored().flange("outer").orElseThrow().cutouts().list()).isEmpty();
  }

  @Test
  void a_cutout_lowers_the_demand_that_the_register_shows() throws Exception {
    double before = gather();
    as(Role.LEAD, cut("100", "120", ""));
    // A circle: 20 mm of 300 mm of mould line, 0.6 rad at 500 mm, are gone.
    assertThat(gather() / before).isCloseTo(1 - 20.0 / 300, within(1e-4));
  }

  @Test
  void what_cannot_be_read_is_said_beside_its_field_and_nothing_is_changed() throws Exception {
    as(
            Role.LEAD,
            sent(version())
                .param("holes[0].label", "T1")
                .param("holes[0].kind", "TOOLING")
                .param("holes[0].xMm", "1,5")
                .param("holes[0].yMm", "470")
                .param("holes[0].diameterMm", "5")
                .param("holes[1].label", "T1")
                .param("holes[1].kind", "TOOLING")
                .param("holes[1].xMm", "10")
                .param("holes[1].yMm", "470")
                .param("holes[1].diameterMm", "-5")
                .param("cutouts[0].flange", "nowhere")
                .param("cutouts[0].fromMm", "90")
                .param("cutouts[0].toMm", "80"))
        .andExpect(status().is(422))
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("x_mm &quot;1,5&quot;"),
                        containsString("another hole of this part is called so"),
                        containsString("diameter_mm &quot;-5&quot;"),
                        containsString("this part has no such flange"),
                        containsString("value=\"1,5\""))));
    assertThat(stored().holes().list()).isEmpty();
  }

  @Test
  void a_cutout_that_cannot_be_made_is_refused_with_the_reason() throws Exception {
    as(Role.LEAD, cut("0", "900", "")).andExpect(said("cutToMm is 900"));
    as(Role.LEAD, cut("100", "120", "17")).andExpect(said("would end in the bend"));
    as(Role.LEAD, cut("0", "300", "")).andExpect(said("leave nothing of the flange"));
    as(Role.LEAD, cut("100", "120", "9")).andExpect(redirectedUrl("/parts/" + part));
  }

  @Test
  void who_comes_late_changes_nothing() throws Exception {
    long seen = version();
    as(Role.LEAD, cut("100", "120", "9")).andExpect(redirectedUrl("/parts/" + part));
    as(
            Role.LEAD,
            sent(seen)
                .param("cutouts[0].flange", "outer")
                .param("cutouts[0].fromMm", "10")
                .param("cutouts[0].toMm", "20"))
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Somebody changed this part")));
    assertThat(stored().flange("outer").orElseThrow().cutouts().list()).hasSize(1);
  }

  @Test
  void a_label_is_shown_and_never_obeyed() throws Exception {
    as(
            Role.LEAD,
            sent(version())
                .param("holes[0].label", "<script>alert(1)</script>")
                .param("holes[0].kind", "LIGHTENING")
                .param("holes[0].xMm", "0")
                .param("holes[0].yMm", "470")
                .param("holes[0].diameterMm", "5"))
        .andExpect(redirectedUrl("/parts/" + part));
    as(Role.GUEST, get("/parts/" + part))
        .andExpect(content().string(not(containsString("<script>alert"))));
  }

  private static ResultMatcher said(String words) {
    return result -> {
      status().is(422).match(result);
      content().string(containsString(words)).match(result);
    };
  }

  private MockHttpServletRequestBuilder filled() {
    return sent(version())
        .param("holes[0].label", "T1")
        .param("holes[0].kind", "TOOLING")
        .param("holes[0].xMm", "-20.50")
        .param("holes[0].yMm", "470")
        .param("holes[0].diameterMm", "5")
        .param("cutouts[0].flange", "outer")
        .param("cutouts[0].fromMm", "100")
        .param("cutouts[0].toMm", "120.0")
        .param("cutouts[0].depthMm", "9");
  }

  private MockHttpServletRequestBuilder cut(String from, String to, String depth) {
    return sent(version())
        .param("cutouts[0].flange", "outer")
        .param("cutouts[0].fromMm", from)
        .param("cutouts[0].toMm", to)
        .param("cutouts[0].depthMm", depth);
  }

  private MockHttpServletRequestBuilder sent(long version) {
    return post(form()).param("version", String.valueOf(version)).param("trimAllowanceMm", "1.5");
  }

  private String form() {
    return "/parts/" + part + "/layout";
  }

  private Part stored() {
    return parts.whole(part).orElseThrow();
  }

  private long version() {
    return stored().version();
  }

  private double gather() {
    return stored().flange("outer").orElseThrow().summary().gatherMm();
  }

  private ResultActions as(Role role, MockHttpServletRequestBuilder request) throws Exception {
    String[] permissions = role.permissions().stream().map(Enum::name).toArray(String[]::new);
    return mvc.perform(
        request
            .with(user("somebody").authorities(AuthorityUtils.createAuthorityList(permissions)))
            .with(csrf()));
  }
}
