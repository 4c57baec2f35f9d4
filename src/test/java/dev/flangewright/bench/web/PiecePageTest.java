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
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.PieceState;
import dev.flangewright.bench.Pieces;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@DatabaseTest
class PiecePageTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired Pieces pieces;
  AWorkshop workshop;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
  }

  @Test
  void a_piece_is_begun_held_checked_scrapped_and_the_next_one_is_offered() throws Exception {
    long part = workshop.part("TW-F07-S3L");
    String address =
        String.valueOf(
            send(Role.VOLUNTEER, "/parts/" + part + "/pieces")
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl());
    Piece piece = pieces.findByPartIdOrderByNumber(part).get(0);
    assertThat(address).isEqualTo("/pieces/" + piece.id());
    show(Role.VOLUNTEER, address)
        .andExpect(content().string(containsString("Next: lay out and cut")))
        .andExpect(content().string(not(containsString("Hold point. Before it"))));

    workshop.bringTo(read(part), "edges");
    show(Role.VOLUNTEER, address)
        .andExpect(content().string(containsString("Hold point. Before it can be finished")));
    send(Role.VOLUNTEER, address + "/stages/edges/start").andExpect(redirectedUrl(address));
    send(Role.VOLUNTEER, address + "/stages/edges/finish", "hours", "0.5", "note", "both faces")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Both faces deburred")))
        .andExpect(content().string(containsString("An inspector or the lead")));
    send(Role.VOLUNTEER, address + "/stages/edges/check").andExpect(status().isForbidden());
    show(Role.VOLUNTEER, address)
        .andExpect(content().string(not(containsString("Record the check as done"))));
    show(Role.INSPECTOR, address)
        .andExpect(content().string(containsString("Record the check as done")));
    send(Role.INSPECTOR, address + "/stages/edges/check").andExpect(redirectedUrl(address));
    send(Role.VOLUNTEER, address + "/stages/edges/finish", "hours", "0,5")
        .andExpect(redirectedUrl(address));
    show(Role.FITTER, address)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Next: first flange in passes"),
                        containsString("3 h 30 logged"),
                        containsString("mm to gather"),
                        containsString("gloves for handling"))));

    show(Role.FITTER, address + "/inspection?outcome=SCRAP")
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Why is it scrapped?"),
                        containsString("<option value=\"first-flange\" selected"),
                        containsString("File and polish the edge lengthwise"))));
    send(Role.FITTER, address + "/inspections", "outcome", "SCRAP", "stage", "first-flange")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("note is missing")));
    send(
            Role.FITTER,
            address + "/inspections",
            "outcome",
            "SCRAP",
            "stage",
            "first-flange",
            "cause",
            "edge-not-deburred",
            "note",
            "crack at station 4")
        .andExpect(redirectedUrl(address));
    show(Role.FITTER, address)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Scrapped at first flange in passes"),
                        containsString("edge not deburred"),
                        containsString("crack at station 4"),
                        containsString("Begin piece 2 of TW-F07-S3L"))));
    send(Role.VOLUNTEER, "/parts/" + part + "/pieces").andExpect(status().is3xxRedirection());
    assertThat(pieces.findByPartIdOrderByNumber(part))
        .extracting(Piece::state)
        .containsExactly(PieceState.SCRAPPED, PieceState.IN_WORK);
  }

  @Test
  void an_entry_on_an_old_page_comes_back_with_what_was_typed_and_what_happened() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S4L"));
    String address = "/pieces/" + piece.id();
    send(Role.VOLUNTEER, address + "/stages/lay-out-and-cut/start", "seen", "0");
    send(Role.LEAD, address + "/stages/lay-out-and-cut/finish", "seen", "1", "hours", "2");

    send(
            Role.VOLUNTEER,
            address + "/stages/lay-out-and-cut/finish",
            "seen",
            "1",
            "hours",
            "3.25",
            "note",
            "my note")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("lead finished &quot;Lay out and cut&quot;")))
        .andExpect(content().string(containsString("my note")));
    assertThat(read(piece.part().id()).log()).hasSize(2);
  }

  @Test
  void hours_that_make_no_sense_come_back_beside_the_form() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S5L"));
    String address = "/pieces/" + piece.id() + "/stages/lay-out-and-cut/";
    send(Role.FITTER, address + "start");

    for (String hours : new String[] {"NaN", "-1", "1001", "an hour"}) {
      send(Role.FITTER, address + "finish", "hours", hours, "note", "kept")
          .andExpect(status().isUnprocessableContent())
          .andExpect(content().string(containsString("hours")))
          .andExpect(content().string(containsString("value=\"" + hours + "\"")))
          .andExpect(content().string(containsString("value=\"kept\"")));
    }
    assertThat(read(piece.part().id()).stagesDone()).isZero();
  }

  @Test
  void the_last_entry_is_taken_back_with_a_reason_and_stays_in_the_log() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S6L"));
    String address = "/pieces/" + piece.id();
    workshop.bringTo(piece, "tooling-holes");

    send(Role.VOLUNTEER, address + "/undo").andExpect(status().isUnprocessableContent());
    send(Role.VOLUNTEER, address + "/undo", "reason", "the wrong blank")
        .andExpect(redirectedUrl(address));

    show(Role.VOLUNTEER, address)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("<del>fitter finished"),
                        containsString("taken back later"),
                        containsString("the wrong blank"))));
  }

  @Test
  void a_check_is_taken_back_only_by_whoever_may_do_it() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S7L"));
    String address = "/pieces/" + piece.id();
    workshop.bringTo(piece, "edges");
    send(Role.FITTER, address + "/stages/edges/start");
    send(Role.INSPECTOR, address + "/stages/edges/check");

    send(Role.FITTER, address + "/undo", "reason", "so").andExpect(status().isForbidden());
    show(Role.FITTER, address)
        .andExpect(content().string(not(containsString("Why it is taken back"))));
    send(Role.INSPECTOR, address + "/undo", "reason", "looked at the wrong piece")
        .andExpect(redirectedUrl(address));
    assertThat(read(piece.part().id()).held()).isTrue();
  }

  @Test
  void a_guest_reads_and_changes_nothing() throws Exception {
    long part = workshop.part("TW-F07-S8L");
    send(Role.GUEST, "/parts/" + part + "/pieces").andExpect(status().isForbidden());
    Piece piece = workshop.begin(part);
    String address = "/pieces/" + piece.id();

    show(Role.GUEST, address)
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        not(containsString("Start lay out and cut")),
                        not(containsString("Scrap this piece")))));
    send(Role.GUEST, address + "/stages/lay-out-and-cut/start").andExpect(status().isForbidden());
    send(Role.GUEST, address + "/undo", "reason", "so").andExpect(status().isForbidden());
    show(Role.GUEST, address + "/inspection").andExpect(status().isForbidden());
    send(Role.GUEST, address + "/inspections", "outcome", "SCRAP", "note", "so")
        .andExpect(status().isForbidden());
    send(Role.VOLUNTEER, address + "/inspections", "outcome", "SCRAP", "note", "so")
        .andExpect(status().isForbidden());
    assertThat(read(part).log()).isEmpty();
  }

  @Test
  void the_part_sheet_shows_the_pieces_and_offers_the_next_one() throws Exception {
    long part = workshop.part("TW-F07-S11L");
    show(Role.FITTER, "/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("No piece has been begun"),
                        containsString("Begin piece 1"),
                        containsString("No piece of this part has been inspected"))));
    Piece piece = workshop.begin(part);
    show(Role.FITTER, "/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("href=\"/pieces/" + piece.id() + "\""),
                        containsString("0 of 10"),
                        not(containsString("Begin piece")))));
    send(
        Role.LEAD,
        "/pieces/" + piece.id() + "/inspections",
        "outcome",
        "SCRAP",
        "stage",
        "cutouts",
        "cause",
        "tool-marks",
        "note",
        "dropped");
    show(Role.GUEST, "/parts/" + part)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Tool marks or dents"),
                        containsString("dropped"),
                        not(containsString("Begin piece")))));
  }

  @Test
  void html_in_a_note_is_shown_as_it_was_typed() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S9L"));
    String address = "/pieces/" + piece.id();
    send(
        Role.FITTER,
        address + "/stages/lay-out-and-cut/start",
        "note",
        "<script>alert(1)</script><b>bold</b>");

    show(Role.FITTER, address)
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("&lt;script&gt;alert(1)&lt;/script&gt;"),
                        not(containsString("<script>alert")),
                        not(containsString("<b>bold")))));
  }

  @Test
  void there_is_no_page_for_a_piece_or_stage_that_does_not_exist() throws Exception {
    Piece piece = workshop.begin(workshop.part("TW-F07-S10L"));

    show(Role.FITTER, "/pieces/987654").andExpect(status().isNotFound());
    show(Role.FITTER, "/pieces/987654/inspection").andExpect(status().isNotFound());
    send(Role.FITTER, "/parts/987654/pieces").andExpect(status().isNotFound());
    send(Role.FITTER, "/pieces/" + piece.id() + "/stages/anodise/start")
        .andExpect(status().isNotFound());
  }

  private Piece read(long part) {
    return AWorkshop.as(Role.GUEST, () -> new Reading(context).first(part));
  }

  private ResultActions show(Role role, String address) throws Exception {
    return mvc.perform(get(address).with(signedIn(role)));
  }

  private ResultActions send(Role role, String address, String... fields) throws Exception {
    var request = post(address).with(signedIn(role)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }
}
