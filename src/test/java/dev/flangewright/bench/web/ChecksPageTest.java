package dev.flangewright.bench.web;

import static dev.flangewright.bench.AWorkshop.signedIn;
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

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.CheckCard;
import dev.flangewright.bench.CheckKind;
import dev.flangewright.bench.EditRoute;
import dev.flangewright.bench.KeepRoutes;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.Route;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Checks, clearances and the time line on the page of a piece. */
@DatabaseTest
class ChecksPageTest {

  private static final String CUT = "/stages/lay-out-and-cut";
  private static final String LENGTH = "check.length-of-the-blank";

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired KeepRoutes routes;
  @Autowired EditRoute edit;
  @Autowired KeepAccounts accounts;
  AWorkshop workshop;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
  }

  @Test
  void checks_are_answered_while_the_stage_is_finished() throws Exception {
    String piece = pieceWithChecks();
    send(Role.FITTER, piece + CUT + "/start");
    show(Role.FITTER, piece)
        .andExpect(content().string(containsString("Wanted: 412 mm, 411.5 to 412.5 mm")))
        .andExpect(content().string(containsString("Grain marked")));

    send(Role.FITTER, piece + CUT + "/finish", LENGTH, "412,2", "hours", "0.5")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Missing: Grain marked")))
        .andExpect(content().string(containsString("<strong>412.2 mm</strong>")));
    send(Role.FITTER, piece + CUT + "/finish", "check.grain-marked", "yes", "hours", "0.5")
        .andExpect(redirectedUrl(piece));

    show(Role.GUEST, piece)
        .andExpect(content().string(containsString("Next: tooling holes")))
        .andExpect(content().string(containsString("Length of the blank: 412.2 mm")));
  }

  @Test
  void a_check_that_is_not_met_is_recorded_and_let_pass_only_by_who_releases_holds()
      throws Exception {
    String piece = pieceWithChecks();
    send(Role.FITTER, piece + CUT + "/start");
    send(Role.FITTER, piece + CUT + "/answers", LENGTH, "410", "check.grain-marked", "yes")
        .andExpect(redirectedUrl(piece));

    show(Role.FITTER, piece)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("A check is not met"),
                        containsString("Held: lay out and cut"),
                        not(containsString("Let this check pass")))));
    String pass = piece + CUT + "/checks/length-of-the-blank/pass";
    send(Role.FITTER, pass, "note", "so").andExpect(status().isForbidden());
    send(Role.INSPECTOR, pass).andExpect(status().isUnprocessableContent());
    send(Role.INSPECTOR, pass, "note", "surplus is trimmed later").andExpect(redirectedUrl(piece));
    send(Role.FITTER, piece + CUT + "/finish").andExpect(redirectedUrl(piece));

    show(Role.GUEST, piece)
        .andExpect(content().string(containsString("surplus is trimmed later")))
        .andExpect(content().string(containsString("410 mm (wanted: 412 mm")));
  }

  @Test
  void an_answer_that_cannot_be_read_comes_back_as_it_was_typed() throws Exception {
    String piece = pieceWithChecks();
    send(Role.FITTER, piece + CUT + "/start");

    send(Role.FITTER, piece + CUT + "/finish", LENGTH, "about 412")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("value=\"about 412\"")));
  }

  @Test
  void who_is_not_cleared_for_a_stage_is_told_who_is() throws Exception {
    String piece = "/pieces/" + workshop.begin(workshop.part("TW-F07-S1")).id();
    String cutter = "cutter " + workshop.buildId();
    AWorkshop.as(
        Role.LEAD,
        () -> {
          accounts.add(cutter, Role.FITTER, "four plain words here");
          return cutter;
        });
    var learner = user("learner").authorities(AuthorityUtils.createAuthorityList("LOG_WORK"));

    mvc.perform(get(piece).with(learner))
        .andExpect(content().string(containsString("It waits for somebody cleared to")))
        .andExpect(content().string(not(containsString("Start lay out and cut"))));
    mvc.perform(post(piece + CUT + "/start").with(learner).with(csrf()))
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("needs somebody cleared to cut")))
        .andExpect(content().string(containsString(cutter)));
    send(Role.FITTER, piece + CUT + "/start").andExpect(redirectedUrl(piece));
    mvc.perform(post(piece + CUT + "/finish").with(learner).with(csrf()))
        .andExpect(status().isConflict());
  }

  @Test
  void an_inspection_needs_the_clearance_that_its_stage_asks_for() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S1"));
    workshop.bringTo(piece, "inspect");
    var notCleared =
        user("ivo").authorities(AuthorityUtils.createAuthorityList("INSPECT", "SCRAP"));

    mvc.perform(
            post("/pieces/" + piece.id() + "/inspections")
                .param("outcome", "ACCEPT")
                .with(notCleared)
                .with(csrf()))
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("needs somebody cleared to inspect")));
    send(Role.INSPECTOR, "/pieces/" + piece.id() + "/inspections", "outcome", "ACCEPT")
        .andExpect(redirectedUrl("/pieces/" + piece.id()));
    show(Role.GUEST, "/pieces/" + piece.id())
        .andExpect(content().string(containsString("inspector accepted")))
        .andExpect(content().string(containsString("fitter began it on the route")));
  }

  private String pieceWithChecks() throws Exception {
    Route route =
        routes.ofBuild(workshop.buildId()).stream()
            .filter(each -> each.name().equals("One shrink flange"))
            .findFirst()
            .orElseThrow();
    AWorkshop.as(
        Role.LEAD,
        () -> {
          Route draft = routes.draftNext(route.id());
          long first = draft.stages().get(0).id();
          edit.ask(
              draft.id(),
              0,
              first,
              new CheckCard("Length of the blank", CheckKind.NUMBER, "mm", 412.0, 411.5, 412.5));
          edit.ask(draft.id(), 1, first, CheckCard.yes("Grain marked"));
          routes.release(draft.id(), 2);
          return draft;
        });
    return "/pieces/" + workshop.begin(workshop.part("TW-F07-S1")).id();
  }

  private ResultActions show(Role role, String address) throws Exception {
    return mvc.perform(get(address).with(signedIn(role))).andExpect(status().isOk());
  }

  private ResultActions send(Role role, String address, String... fields) throws Exception {
    var request = post(address).with(signedIn(role)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }
}
