package dev.flangewright.parts.web;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
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

import dev.flangewright.forming.FormingModel;
import dev.flangewright.materials.KeepOwnMetals;
import dev.flangewright.materials.OwnMetal;
import dev.flangewright.parts.FlangeSummary;
import dev.flangewright.parts.PartSummary;
import dev.flangewright.parts.Parts;
import dev.flangewright.parts.SampleRegister;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.UUID;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A build's own metals and shop values: their pages, and what becomes of the figures. */
@DatabaseTest
class OwnValuesPagesTest {

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts accounts;
  @Autowired KeepOwnMetals metals;
  @Autowired Parts parts;

  private long build;
  private long part;

  /** Two parts, the first with a stretch flange: 2024-O, 1.2 mm, polished. */
  @BeforeEach
  void aBuildWithParts(@Autowired ApplicationContext application) {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "a long enough one");
    }
    SampleRegister sample = new SampleRegister(application);
    build = sample.build("Own values " + UUID.randomUUID());
    sample.parts(build, 2);
    part = parts.findByBuildIdAndPartNumber(build, "P-001").orElseThrow().id();
  }

  @Test
  void a_certificate_answers_before_the_tables_and_the_part_sheet_says_whose_it_is()
      throws Exception {
    double before = splitUtilisation();
    enter("O", "Z-12345", "elongationPercent", "5").andExpect(redirectedUrl(metalsPage()));

    shows(
        metalsPage(),
        allOf(
            containsString("certificate Z-12345, entered by lead on"),
            containsString("Elongation 5.0")));
    shows("/parts/" + part, containsString("certificate Z-12345, entered by lead on"));
    shows("/builds/" + build + "/parts/new", containsString("2024 O"));
    summedUpAgain();
    // FM-SPLIT: the limit goes with ln(1 + A/100); the table has 20 % typical for 2024-O.
    assertThat(splitUtilisation() / before).isGreaterThan(1);
    assertThat(splitUtilisation()).isEqualTo(strain() / (0.90 * Math.log1p(0.05)));
  }

  @Test
  void another_temper_leaves_the_figures_alone() throws Exception {
    long version = parts.whole(part).orElseThrow().version();
    enter("T3", "Z-2", "elongationPercent", "5").andExpect(redirectedUrl(metalsPage()));
    shows("/parts/" + part, not(containsString("certificate Z-2")));
    assertThat(parts.whole(part).orElseThrow().version()).isEqualTo(version);
  }

  @Test
  void a_change_withdraws_the_old_values_and_keeps_them_in_the_record() throws Exception {
    enter("O", "Z-old", "proofMpa", "90");
    OwnMetal old = metals.of(build).get(0);
    String edit = metalsPage() + "/" + old.id() + "/edit";
    shows(edit, allOf(containsString("Z-old"), containsString("value=\"90\"")));
    as(
            Role.MANAGER,
            post(edit)
                .param("version", "0")
                .param("alloy", "2024")
                .param("temper", "O")
                .param("certificate", "Z-new")
                .param("proofMpa", "95"))
        .andExpect(redirectedUrl(metalsPage()));
    assertThat(metals.of(build)).hasSize(2);
    shows(metalsPage(), allOf(containsString("Z-old"), containsString("withdrawn by manager on")));
    shows("/parts/" + part, allOf(containsString("Z-new"), not(containsString("Z-old"))));

    as(Role.LEAD, post(metalsPage() + "/" + old.id() + "/withdraw").param("version", "0"))
        .andExpect(status().isConflict());
  }

  @Test
  void withdrawn_values_answer_no_more() throws Exception {
    enter("O", "Z-3", "proofMpa", "90");
    OwnMetal metal = metals.of(build).get(0);
    as(Role.LEAD, post(metalsPage() + "/" + metal.id() + "/withdraw").param("version", "0"))
        .andExpect(redirectedUrl(metalsPage()));
    shows("/parts/" + part, not(containsString("Z-3")));
  }

  @Test
  void what_cannot_be_taken_is_said_beside_its_field_and_a_second_certificate_is_refused()
      throws Exception {
    enter("O", "Z-4", "youngMpa", "70")
        .andExpect(status().isUnprocessableContent())
        .andExpect(
            content()
                .string(
                    allOf(containsString("young_mpa"), containsString("from 1000 to 1000000"))));
    enter("O", "Z-5", "uniformStrain", "").andExpect(status().isUnprocessableContent());
    enter("O", "Z-6", "proofMpa", "90").andExpect(redirectedUrl(metalsPage()));
    enter("O", "Z-7", "proofMpa", "91").andExpect(status().isConflict());
    assertThat(metals.of(build)).hasSize(1);
  }

  @Test
  void a_fitter_reads_both_pages_and_changes_nothing() throws Exception {
    as(Role.FITTER, get(metalsPage()))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString("Enter a certificate"))));
    as(Role.FITTER, get(shopPage()))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString("Use this value"))));
    as(Role.FITTER, get(metalsPage() + "/new")).andExpect(status().isForbidden());
    as(Role.FITTER, post(metalsPage() + "/new").param("alloy", "2024"))
        .andExpect(status().isForbidden());
    as(Role.FITTER, use("POLISHED_EDGE", "0.8", 0)).andExpect(status().isForbidden());
  }

  @Test
  void the_page_of_shop_values_says_how_every_default_stands() throws Exception {
    shows(
        shopPage(),
        allOf(
            containsString("shop default, no source"),
            containsString("FAA-H-8083-31"),
            containsString("above 0 and at most 1")));
    shows("/parts/" + part, containsString("The factors are a shop default"));
  }

  @Test
  void an_edge_factor_of_the_builds_own_is_used_named_and_taken_back() throws Exception {
    double before = splitUtilisation();
    as(Role.MANAGER, use("POLISHED_EDGE", "0.45", 0)).andExpect(redirectedUrl(shopPage()));
    summedUpAgain();
    assertThat(splitUtilisation()).isEqualTo(2 * before);
    shows(shopPage(), containsString("trial of twelve edges, entered by manager on"));
    shows(
        "/parts/" + part,
        allOf(
            containsString("this build&#39;s own, default 0.9"),
            containsString("trial of twelve edges")));
    long flange = parts.whole(part).orElseThrow().flanges().get(0).id();
    shows(
        "/parts/" + part + "/flanges/" + flange + "/edit",
        containsString("polished lengthwise (factor 0.45)"));

    as(Role.LEAD, post(shopPage() + "/POLISHED_EDGE/default").param("seen", "1"))
        .andExpect(status().isUnprocessableContent());
    as(
            Role.LEAD,
            post(shopPage() + "/POLISHED_EDGE/default")
                .param("seen", "1")
                .param("reason", "the trial was of other sheet"))
        .andExpect(redirectedUrl(shopPage()));
    summedUpAgain();
    assertThat(splitUtilisation()).isEqualTo(before);
    shows(shopPage(), containsString("the trial was of other sheet"));
  }

  @Test
  void a_shop_value_out_of_range_or_from_an_old_page_is_refused() throws Exception {
    as(Role.LEAD, use("POLISHED_EDGE", "1.2", 0))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("above 0 and at most 1")));
    as(Role.LEAD, use("PASSES_ON_ONE_BLOCK", "2.5", 0))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("whole number")));
    as(Role.LEAD, use("POLISHED_EDGE", "0.8", 0)).andExpect(redirectedUrl(shopPage()));
    as(Role.LEAD, use("POLISHED_EDGE", "0.7", 0)).andExpect(status().isConflict());
    as(Role.LEAD, post(shopPage() + "/FILED_EDGE/default").param("seen", "0").param("reason", "x"))
        .andExpect(status().isConflict());
    as(Role.LEAD, use("NO_SUCH_VALUE", "0.7", 0)).andExpect(status().is4xxClientError());
  }

  @Test
  void another_build_keeps_its_defaults(@Autowired ApplicationContext application)
      throws Exception {
    SampleRegister sample = new SampleRegister(application);
    long other = sample.build("Another " + UUID.randomUUID());
    long there = sample.part(other, "P-1");
    as(Role.LEAD, use("K_FACTOR", "0.4", 0)).andExpect(redirectedUrl(shopPage()));
    enter("O", "Z-8", "proofMpa", "90");
    shows(
        "/parts/" + there,
        allOf(not(containsString("Z-8")), not(containsString("this build&#39;s own, default"))));
    as(Role.LEAD, get("/builds/" + other + "/metals/" + metals.of(build).get(0).id() + "/edit"))
        .andExpect(status().isNotFound());
    as(Role.LEAD, get("/builds/999999/metals")).andExpect(status().isNotFound());
    as(Role.LEAD, get("/builds/999999/shop-values")).andExpect(status().isNotFound());
  }

  private ResultActions enter(String temper, String certificate, String field, String value)
      throws Exception {
    return as(
        Role.LEAD,
        post(metalsPage() + "/new")
            .param("alloy", "2024")
            .param("temper", temper)
            .param("certificate", certificate)
            .param(field, value));
  }

  private MockHttpServletRequestBuilder use(String which, String amount, int seen) {
    return post(shopPage() + "/" + which)
        .param("amount", amount)
        .param("source", "trial of twelve edges")
        .param("seen", String.valueOf(seen));
  }

  private void summedUpAgain() {
    await().atMost(30, SECONDS).until(() -> summary().figuresVersion() == FormingModel.VERSION);
  }

  private PartSummary summary() {
    return parts.whole(part).orElseThrow().summary();
  }

  private FlangeSummary stretch() {
    return parts.whole(part).orElseThrow().flange("inner").orElseThrow().summary();
  }

  private double splitUtilisation() {
    Double used = stretch().splitUtilisation();
    assertThat(used).isNotNull();
    return used;
  }

  private double strain() {
    Double strain = stretch().peakEdgeStrain();
    assertThat(strain).isNotNull();
    return strain;
  }

  private String metalsPage() {
    return "/builds/" + build + "/metals";
  }

  private String shopPage() {
    return "/builds/" + build + "/shop-values";
  }

  private void shows(String page, Matcher<String> text) throws Exception {
    as(Role.LEAD, get(page)).andExpect(status().isOk()).andExpect(content().string(text));
  }

  private ResultActions as(Role role, MockHttpServletRequestBuilder request) throws Exception {
    String[] may = role.permissions().stream().map(Enum::name).toArray(String[]::new);
    return mvc.perform(
        request
            .with(csrf())
            .with(user(role.word()).authorities(AuthorityUtils.createAuthorityList(may))));
  }
}
