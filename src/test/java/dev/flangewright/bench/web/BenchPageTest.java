package dev.flangewright.bench.web;

import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.ManyParts;
import dev.flangewright.bench.Piece;
import dev.flangewright.parts.PartProgress;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import dev.flangewright.testing.StatementCount;
import jakarta.persistence.EntityManagerFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@DatabaseTest
class BenchPageTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired PartProgress progress;
  @Autowired EntityManagerFactory database;
  AWorkshop workshop;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
  }

  @Test
  void the_bench_offers_what_the_reader_can_do_and_shows_what_waits() throws Exception {
    Piece held = workshop.begin(workshop.part("TW-F07-S1"));
    workshop.bringTo(held, "edges");
    send(Role.FITTER, "/pieces/" + held.id() + "/stages/edges/start");
    workshop.part("TW-F07-S2");

    show(Role.VOLUNTEER)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Begin piece 1 of TW-F07-S2"),
                        containsString("<h2>Waiting</h2>"),
                        containsString("It waits for the edge check."))));
    show(Role.INSPECTOR)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Do the check"),
                        containsString("This account logs no work."))));
    show(Role.GUEST)
        .andExpect(content().string(not(containsString("type=\"submit\">Begin piece"))));
  }

  @Test
  void a_job_is_passed_on_and_taken_back_and_others_see_why() throws Exception {
    long part = workshop.part("TW-F07-S1");
    String id = Long.toString(part);
    String bench = "/builds/" + workshop.buildId() + "/bench";

    send(Role.FITTER, bench + "/pass-on", "partId", id, "reason", " ")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("reason needs 1 to 200 characters.")));
    send(Role.FITTER, bench + "/pass-on", "partId", id, "reason", "tool is at home")
        .andExpect(redirectedUrl(bench));
    show(Role.FITTER)
        .andExpect(content().string(containsString("you passed on it: tool is at home")));
    show(Role.VOLUNTEER)
        .andExpect(content().string(containsString("fitter passed on it: tool is at home")));
    send(Role.GUEST, bench + "/pass-on", "partId", id, "reason", "no")
        .andExpect(status().isForbidden());

    send(Role.FITTER, bench + "/take-back", "partId", id).andExpect(redirectedUrl(bench));
    show(Role.VOLUNTEER).andExpect(content().string(not(containsString("passed on it"))));
  }

  @Test
  void a_pass_ends_when_somebody_logs_on_the_piece() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S1"));
    String id = Long.toString(piece.part().id());
    String bench = "/builds/" + workshop.buildId() + "/bench";
    send(Role.FITTER, bench + "/pass-on", "partId", id, "reason", "wrist hurts");
    show(Role.FITTER).andExpect(content().string(containsString("you passed on it")));

    send(Role.VOLUNTEER, "/pieces/" + piece.id() + "/stages/lay-out-and-cut/start");

    show(Role.FITTER).andExpect(content().string(not(containsString("you passed on it"))));
  }

  @Test
  void statements_do_not_grow_with_the_build() throws Throwable {
    AWorkshop small = AWorkshop.in(context);
    AWorkshop large = AWorkshop.in(context);
    ManyParts many = new ManyParts(context);
    many.in(small.buildId(), 50);
    many.in(large.buildId(), 5000);

    long unused = statementsOf(small); // the first request also asks whether there is an account
    assertThat(statementsOf(large)).isPositive().isEqualTo(statementsOf(small));
    assertThat(statementsOfProgress(large)).isEqualTo(statementsOfProgress(small)).isEqualTo(1);
  }

  private long statementsOf(AWorkshop of) throws Throwable {
    return StatementCount.of(
        database,
        () ->
            mvc.perform(get("/builds/" + of.buildId() + "/bench").with(signedIn(Role.LEAD)))
                .andExpect(status().isOk()));
  }

  private long statementsOfProgress(AWorkshop of) throws Throwable {
    return StatementCount.of(database, () -> progress.ofBuild(of.buildId()));
  }

  private ResultActions show(Role role) throws Exception {
    return mvc.perform(get("/builds/" + workshop.buildId() + "/bench").with(signedIn(role)))
        .andExpect(status().isOk());
  }

  private ResultActions send(Role role, String address, String... fields) throws Exception {
    var request = post(address).with(signedIn(role)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }
}
