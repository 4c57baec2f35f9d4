package dev.flangewright.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.Hands;
import dev.flangewright.forming.RiskLevel;
import dev.flangewright.overview.Overview.StageProgress;
import dev.flangewright.overview.demo.LoadDemo;
import dev.flangewright.parts.MakeBuild;
import dev.flangewright.parts.RegisterPart;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.quality.ScrapTally;
import dev.flangewright.testing.DatabaseTest;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.annotation.Transactional;

/** The demo build, counted. */
@DatabaseTest(properties = "spring.application.name=flangewright-demo-tests")
@Transactional
class OverviewTest {

  @Autowired MockMvc mvc;
  @Autowired LoadDemo demo;
  @Autowired MakeBuild makeBuild;
  @Autowired ReadOverview read;
  @Autowired KeepAccounts accounts;

  private long build;

  @BeforeEach
  void load() {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "a long enough one");
    }
    SignedIn.as("lead", Role.LEAD, () -> build = demo.load());
  }

  @Test
  void every_part_is_counted_once_by_state_by_frame_and_by_risk() {
    Overview overview = overview();
    assertThat(overview.parts()).isEqualTo(new StateCounts(27, 9, 2, 22, 2));
    assertThat(overview.hull()).hasSize(62);
    assertThat(overview.frames()).hasSize(13);
    assertThat(overview.frames().stream().mapToInt(frame -> frame.parts().total()).sum())
        .isEqualTo(62);
    assertThat(overview.frames().stream().mapToInt(frame -> frame.parts().done()).sum())
        .isEqualTo(24);
    assertThat(overview.risks().stream().mapToInt(Overview.RiskCount::parts).sum()).isEqualTo(62);
    assertThat(overview.risks().stream().mapToInt(Overview.RiskCount::toCome).sum())
        .isEqualTo(62 - 24);
    assertThat(overview.withoutFigures()).isZero();
  }

  @Test
  void a_piece_counts_for_the_stages_that_it_is_past() {
    var stages =
        overview().stages().stream()
            .collect(Collectors.toMap(StageProgress::code, Function.identity()));
    assertThat(stages).as("two of them of the heat-treated route alone").hasSize(13);
    assertThat(stages.get("lay-out-and-cut")).returns(35, StageProgress::done);
    assertThat(stages.get("edges"))
        .returns(32, StageProgress::done)
        .returns(2, StageProgress::held)
        .returns(0, StageProgress::begun)
        .returns(62, StageProgress::total);
    assertThat(stages.get("first-flange")).returns(2, StageProgress::begun);
    assertThat(stages.get("accepted")).returns(24, StageProgress::done);
  }

  @Test
  void scrap_is_ranked_and_the_hardest_parts_that_are_still_to_come_lead() {
    Overview overview = overview();
    assertThat(overview.scrap().get(0)).returns("folded-ruffle", ScrapTally::causeCode);
    assertThat(overview.scrap().stream().mapToLong(ScrapTally::pieces).sum()).isEqualTo(6);
    assertThat(overview.hardest()).hasSize(12);
    assertThat(overview.hardest().subList(0, 2))
        .extracting(HullPart::part)
        .extracting(RegisterPart::riskLevel)
        .containsOnly(RiskLevel.BEYOND);
    assertThat(overview.hardest()).noneMatch(part -> part.part().partNumber().equals("TW-F06-S1"));
    assertThat(overview.next()).hasSize(8).allMatch(job -> !job.reasons().isEmpty());
  }

  @Test
  void the_first_page_shows_the_only_build() throws Exception {
    mvc.perform(get("/").with(guest()))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("How far is Tidewing?"),
                        containsString(
                            "24 of 62 segments are accepted, 2 of them with a concession; 9 are in"
                                + " work, 2 are held and 27 are not begun."),
                        containsString("<svg"),
                        containsString("They approve nothing"),
                        not(containsString(" style=")))));
  }

  @Test
  void with_several_builds_the_first_page_lists_them_and_an_empty_one_says_what_comes_first()
      throws Exception {
    StringBuilder address = new StringBuilder("/builds/");
    SignedIn.as("lead", Role.LEAD, () -> address.append(makeBuild.named("Second", "").id()));

    mvc.perform(get("/").with(guest())).andExpect(content().string(containsString("Which build?")));
    mvc.perform(get(address.toString()).with(account(Role.LEAD)))
        .andExpect(content().string(containsString("Import the register and the contours")));
    mvc.perform(get(address.toString()).with(guest()))
        .andExpect(content().string(containsString("has to enter the parts first")));
  }

  @Test
  void a_frame_is_shown_large_with_its_segments_and_an_unknown_one_is_not_found() throws Exception {
    mvc.perform(get("/builds/{id}/frames/F8", build).with(guest()))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("5 of 6 segments are accepted")))
        .andExpect(content().string(containsString("TW-F08-S4")));
    mvc.perform(get("/builds/{id}/frames/F99", build).with(guest()))
        .andExpect(status().isNotFound());
    mvc.perform(get("/builds/999999").with(guest())).andExpect(status().isNotFound());
  }

  private Overview overview() {
    return read.of(build, Hands.of("guest", Role.GUEST));
  }

  private static RequestPostProcessor guest() {
    return account(Role.GUEST);
  }

  private static RequestPostProcessor account(Role role) {
    String[] permissions = role.permissions().stream().map(Enum::name).toArray(String[]::new);
    return user(role.word()).authorities(AuthorityUtils.createAuthorityList(permissions));
  }
}
