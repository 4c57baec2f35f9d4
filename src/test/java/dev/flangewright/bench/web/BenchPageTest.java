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
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.Piece;
import dev.flangewright.parts.PartProgress;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import jakarta.persistence.EntityManagerFactory;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
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
                        containsString("Waiting for somebody else"),
                        containsString("waits for the edge check"))));
    show(Role.INSPECTOR)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Do the check"),
                        not(containsString("Waiting for somebody else")))));
    show(Role.GUEST)
        .andExpect(content().string(not(containsString("type=\"submit\">Begin piece"))));
  }

  @Test
  void statements_do_not_grow_with_the_build() throws Exception {
    AWorkshop small = AWorkshop.in(context);
    AWorkshop large = AWorkshop.in(context);
    fill(small, 60);
    fill(large, 600);

    assertThat(statementsOf(large, Role.LEAD)).isEqualTo(statementsOf(small, Role.LEAD));
    assertThat(statementsOfProgress(large)).isEqualTo(statementsOfProgress(small)).isEqualTo(1);
  }

  private static void fill(AWorkshop workshop, int parts) {
    for (int i = 0; i < parts; i++) {
      long part = workshop.part("TW-%04d".formatted(i));
      if (i % 20 == 0) {
        workshop.begin(part);
      }
    }
  }

  private long statementsOf(AWorkshop of, Role role) throws Exception {
    Statistics statistics = counting();
    mvc.perform(get("/builds/" + of.buildId() + "/bench").with(signedIn(role)))
        .andExpect(status().isOk());
    return statistics.getPrepareStatementCount();
  }

  private long statementsOfProgress(AWorkshop of) {
    Statistics statistics = counting();
    progress.ofBuild(of.buildId());
    return statistics.getPrepareStatementCount();
  }

  private Statistics counting() {
    Statistics statistics = database.unwrap(SessionFactory.class).getStatistics();
    statistics.setStatisticsEnabled(true);
    statistics.clear();
    return statistics;
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
