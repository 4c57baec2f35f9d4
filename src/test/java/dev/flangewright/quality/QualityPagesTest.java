package dev.flangewright.quality;

import static dev.flangewright.bench.AWorkshop.as;
import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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
import dev.flangewright.bench.Piece;
import dev.flangewright.people.Refused;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@DatabaseTest
class QualityPagesTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired RecordInspection record;
  @Autowired ScrapStatistics statistics;
  @Autowired KeepScrapCauses causes;
  @Autowired ScrapCauses stored;
  AWorkshop workshop;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
  }

  @Test
  void scrapped_pieces_and_their_hours_are_counted_by_cause() throws Exception {
    scrap(piece("TW-1", "edges"), "edge-not-deburred", "nick <i>here</i>");
    scrap(piece("TW-2", "first-flange"), "edge-not-deburred", "crack");
    scrap(piece("TW-3", "cutouts"), "folded-ruffle", "lap");
    Piece accepted = piece("TW-4", "inspect");
    inspect(accepted, new Finding(Outcome.ACCEPT, null, null, "", null));

    assertThat(statistics.byCause(workshop.buildId()))
        .extracting(ScrapTally::causeCode, ScrapTally::pieces, ScrapTally::hours)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("edge-not-deburred", 2L, 7.0),
            org.assertj.core.groups.Tuple.tuple("folded-ruffle", 1L, 2.0));
    mvc.perform(get("/builds/" + workshop.buildId() + "/quality").with(signedIn(Role.GUEST)))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("3 pieces were scrapped, with 9 h of work in them"),
                        containsString("<svg"),
                        containsString("75 %"),
                        containsString("nick &lt;i&gt;here"),
                        not(containsString("<i>here")))));
  }

  @Test
  void hours_spent_before_a_rework_are_lost_too() {
    Piece piece = piece("TW-1", "first-flange");
    inspect(piece, new Finding(Outcome.REWORK, null, "edges", "rough", null));
    scrap(piece, "tool-marks", "dropped");

    assertThat(statistics.byCause(workshop.buildId()))
        .singleElement()
        .extracting(ScrapTally::hours)
        .isEqualTo(4.0);
  }

  @Test
  void scrap_wants_a_cause_a_stage_and_a_note_and_a_concession_a_note() {
    Piece piece = piece("TW-1", "inspect");

    refused(piece, new Finding(Outcome.SCRAP, null, "edges", "crack", null), "cause");
    refused(piece, new Finding(Outcome.SCRAP, "gremlins", "edges", "crack", null), "gremlins");
    refused(piece, new Finding(Outcome.SCRAP, "tool-marks", " ", "crack", null), "stage");
    refused(piece, new Finding(Outcome.SCRAP, "tool-marks", "edges", " ", null), "note");
    refused(piece, new Finding(Outcome.CONCESSION, null, null, "", null), "note");
    refused(piece, new Finding(Outcome.REWORK, null, "edges", "", null), "note");
    refused(piece, new Finding(Outcome.REWORK, null, null, "rough", null), "stage");
  }

  @Test
  void a_fitter_may_scrap_but_not_pass() {
    Piece piece = piece("TW-1", "inspect");

    assertThatThrownBy(
            () ->
                as(
                    Role.FITTER,
                    () ->
                        record.of(
                            piece.id(), new Finding(Outcome.ACCEPT, null, null, "", null))))
        .isInstanceOf(AccessDeniedException.class);
  }

  @Test
  void a_cause_is_added_reworded_retired_and_restored() throws Exception {
    send(Role.FITTER, "/quality/causes", "name", "Mouse").andExpect(status().isForbidden());
    send(Role.MANAGER, "/quality/causes", "name", "Blank <b>bent</b> in store")
        .andExpect(redirectedUrl("/quality/causes"));
    ScrapCause cause = stored.findByCode("blank-b-bent-b-in-store").orElseThrow();
    String address = "/quality/causes/" + cause.id();

    send(Role.LEAD, address, "seen", "0", "name", "Blank bent in the rack")
        .andExpect(redirectedUrl("/quality/causes"));
    send(Role.LEAD, address, "seen", "0", "name", "Another name")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Somebody changed this cause")))
        .andExpect(content().string(containsString("value=\"Another name\"")));
    send(Role.LEAD, address + "/retire", "seen", "1")
        .andExpect(redirectedUrl("/quality/causes"));

    assertThat(causes.offered()).extracting(ScrapCause::code).doesNotContain(cause.code());
    refused(
        piece("TW-1", "cutouts"),
        new Finding(Outcome.SCRAP, cause.code(), "cutouts", "bent", null),
        cause.code());
    send(Role.LEAD, address + "/restore", "seen", "2");
    assertThat(causes.offered())
        .filteredOn(offered -> offered.code().equals(cause.code()))
        .singleElement()
        .satisfies(c -> assertThat(c.name()).isEqualTo("Blank bent in the rack"))
        .satisfies(c -> assertThat(c.source()).isEqualTo("entered here"));
  }

  @Test
  void a_cause_has_a_name_of_its_own() throws Exception {
    send(Role.LEAD, "/quality/causes", "name", "oil-canning web").andExpect(status().isConflict());
    send(Role.LEAD, "/quality/causes", "name", " ").andExpect(status().isUnprocessableContent());
  }

  private Piece piece(String partNumber, String at) {
    Piece piece = workshop.begin(workshop.part(partNumber));
    workshop.bringTo(piece, at);
    return piece;
  }

  private void scrap(Piece piece, String cause, String note) {
    inspect(piece, new Finding(Outcome.SCRAP, cause, "cutouts", note, null));
  }

  private Inspection inspect(Piece piece, Finding finding) {
    return as(Role.INSPECTOR, () -> record.of(piece.id(), finding));
  }

  private void refused(Piece piece, Finding finding, String names) {
    assertThatThrownBy(() -> inspect(piece, finding))
        .isInstanceOf(Refused.class)
        .hasMessageContaining(names);
  }

  private ResultActions send(Role role, String address, String... fields) throws Exception {
    var request = post(address).with(signedIn(role)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }
}
