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
import dev.flangewright.bench.KeepRoute;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.RouteStage;
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
  @Autowired KeepRoute route;
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

  @Test
  void the_lead_changes_the_route_and_pieces_begun_keep_theirs() throws Exception {
    Piece before = workshop.begin(workshop.part("TW-F07-S1"));
    String address = "/builds/" + workshop.buildId() + "/route";
    String seal = route.of(workshop.buildId()).seal();

    send(Role.MANAGER, address + "/stages", "name", "Anodise <b>", "kind", "SET", "seal", seal)
        .andExpect(redirectedUrl(address));
    mvc.perform(get(address).with(signedIn(Role.MANAGER)))
        .andExpect(content().string(containsString("Anodise &lt;b&gt;")));
    Piece after = workshop.begin(workshop.part("TW-F07-S2"));

    assertThat(after.stagesTotal()).isEqualTo(before.stagesTotal() + 1);
    assertThat(new Reading(context).first(before.part().id()).stages()).hasSize(10);
    send(Role.MANAGER, address + "/stages", "name", "Paint", "kind", "SET", "seal", seal)
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Somebody changed this route")))
        .andExpect(content().string(containsString("value=\"Paint\"")));
  }

  @Test
  void a_route_is_changed_by_nobody_who_only_works_on_it() throws Exception {
    String address = "/builds/" + workshop.buildId() + "/route";
    RouteStage first = route.of(workshop.buildId()).stages().get(0);
    String seal = route.of(workshop.buildId()).seal();

    mvc.perform(get(address).with(signedIn(Role.FITTER)))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString("Add the stage"))));
    send(Role.FITTER, address + "/stages/" + first.id() + "/remove", "seal", seal)
        .andExpect(status().isForbidden());
  }

  @Test
  void stages_are_moved_and_removed_but_not_the_inspection() throws Exception {
    String address = "/builds/" + workshop.buildId() + "/route";
    RouteStage inspect = stage("inspect");
    change(address, stage("cutouts"), "earlier").andExpect(redirectedUrl(address));
    change(address, stage("cutouts"), "remove").andExpect(redirectedUrl(address));
    change(address, inspect, "remove").andExpect(status().isUnprocessableContent());

    assertThat(route.of(workshop.buildId()).stages())
        .extracting(RouteStage::code)
        .startsWith("lay-out-and-cut", "tooling-holes", "edges")
        .endsWith("inspect", "accepted");
  }

  private RouteStage stage(String code) {
    return route.of(workshop.buildId()).stages().stream()
        .filter(stage -> stage.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  private ResultActions change(String address, RouteStage stage, String step) throws Exception {
    String seal = route.of(workshop.buildId()).seal();
    return send(
        Role.LEAD, address + "/stages/" + stage.id() + "/" + step, "seal", seal);
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
