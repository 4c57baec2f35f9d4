package dev.flangewright.stock.web;

import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.people.Role;
import dev.flangewright.stock.Batch;
import dev.flangewright.stock.Batches;
import dev.flangewright.stock.SheetOnHand;
import dev.flangewright.testing.DatabaseTest;
import dev.flangewright.testing.StatementCount;
import jakarta.persistence.EntityManagerFactory;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Every part of the workshop is 2024 O, 1.2 mm. */
@DatabaseTest
class StockPagesTest {

  private static final String CUT = "lay-out-and-cut";

  @Autowired ApplicationContext context;
  @Autowired EntityManagerFactory entities;
  @Autowired MockMvc mvc;
  @Autowired Batches batches;
  @Autowired SheetOnHand sheets;
  private AWorkshop workshop;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
  }

  @Test
  void a_batch_is_recorded_once_with_what_can_be_true_of_it() throws Exception {
    page(Role.GUEST, stock(), "No batch is recorded");
    send(Role.VOLUNTEER, stock() + "/new", "mark", "B-1").andExpect(status().isForbidden());
    send(Role.FITTER, stock() + "/new", "mark", "", "thickness", "thin", "receivedOn", "2999-01-01")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("mark: it must not be empty")))
        .andExpect(content().string(containsString("by gauge as 20 SWG")))
        .andExpect(content().string(containsString("not be in the future")))
        .andExpect(content().string(containsString("value=\"thin\"")));
    Batch batch = record("B-1", "2024", "o", "1.2");
    assertThat(batch.facts().metal().temper()).as("as the library spells it").isEqualTo("O");
    send(Role.FITTER, stock() + "/new", fields("b-1", "2024", "O", "1.2"))
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("already a batch")));
    page(Role.GUEST, stock(), "1 batch: 1 received.", "4711", "C-2041", "4 May 2026");
    page(Role.GUEST, stock() + "?show=HELD_BACK", "0 of 1 batch");
    page(Role.GUEST, stock() + "?alloy=2024", ">B-1<");

    String edit = "/batches/" + batch.id() + "/edit";
    page(Role.FITTER, edit, "value=\"4711\"", "2026-05-04");
    String[] moved = fields("B-1", "2024", "O", "1.2", "version", "0", "place", "Rack <b>9</b>");
    send(Role.FITTER, edit, moved).andExpect(redirectedUrl("/batches/" + batch.id()));
    send(Role.FITTER, edit, moved).andExpect(status().isConflict());
    page(
        Role.GUEST,
        "/batches/" + batch.id(),
        "Rack &lt;b&gt;9",
        "changed place from nothing to Rack");
  }

  @Test
  void an_alloy_that_no_table_knows_is_taken_with_a_plain_note() throws Exception {
    Batch batch = record("X-1", "9999", "Q7", "20 SWG");
    page(
        Role.GUEST,
        "/batches/" + batch.id(),
        "20 SWG (0.91 mm)",
        "No table of the program knows this metal");
  }

  @Test
  void a_batch_is_released_and_held_back_by_who_may() throws Exception {
    Batch batch = record("B-1", "2024", "O", "1.2");
    happens(Role.FITTER, batch, "RELEASE", "me").andExpect(status().isForbidden());
    happens(Role.INSPECTOR, batch, "RELEASE", " ")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("who checked the certificate")));
    happens(Role.INSPECTOR, batch, "RELEASE", "Ivo")
        .andExpect(redirectedUrl("/batches/" + batch.id()));
    page(Role.GUEST, "/batches/" + batch.id(), "Yes, it is released.", "inspector: released");
    happens(Role.VOLUNTEER, batch, "USE_UP", "").andExpect(status().isForbidden());
    happens(Role.FITTER, batch, "HOLD_BACK", "cast <i>recalled</i>");
    page(Role.GUEST, "/batches/" + batch.id(), "No. It is held back: cast &lt;i&gt;recalled");
    happens(Role.FITTER, batch, "USE_UP", "").andExpect(status().isConflict());
    send(Role.INSPECTOR, "/batches/999999/condition", "action", "RELEASE", "words", "x")
        .andExpect(status().isNotFound());
  }

  @Test
  void a_build_that_records_no_batch_cuts_as_it_always_did() throws Exception {
    long piece = begin("P-1");
    page(Role.FITTER, "/pieces/" + piece, "No batch recorded.");
    finish(piece, "").andExpect(redirectedUrl("/pieces/" + piece));
    page(Role.FITTER, "/pieces/" + piece, "No batch recorded.");
  }

  @Test
  void the_one_released_batch_is_chosen_already_and_the_trace_runs_both_ways() throws Exception {
    Batch batch = released("B-1", "2024", "O", "1.2");
    record("OTHER", "2024", "T3", "1.2");
    long piece = begin("P-1");
    page(Role.FITTER, "/pieces/" + piece, "value=\"B-1\" checked=\"checked\"");
    mvc.perform(get("/pieces/" + piece).with(signedIn(Role.FITTER)))
        .andExpect(content().string(not(containsString("value=\"OTHER\""))));
    finish(piece, "")
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("Say which batch it was cut from")));
    finish(piece, "B-1").andExpect(redirectedUrl("/pieces/" + piece));
    page(
        Role.GUEST,
        "/pieces/" + piece,
        "/batches/" + batch.id(),
        "certificate C-2041",
        "cut from batch B-1 (cast 4711)");
    page(Role.GUEST, "/batches/" + batch.id(), "1 piece was cut from it.", "P-1 piece 1");

    happens(Role.INSPECTOR, batch, "HOLD_BACK", "recalled");
    page(Role.GUEST, "/pieces/" + piece, "That batch is held back by now.");
    page(Role.GUEST, "/batches/" + batch.id(), "This batch is held back. Whoever inspects decides");

    undo(piece, "slip");
    page(Role.GUEST, "/pieces/" + piece, "No batch recorded.");
    page(Role.GUEST, "/batches/" + batch.id(), "No piece was cut from it yet.");
  }

  @Test
  void a_batch_that_may_not_be_cut_for_it_is_refused_with_what_is_missing() throws Exception {
    released("B-1", "2024", "O", "1.2");
    released("B-2", "2024", "O", "1.2");
    Batch heldBack = released("HELD", "2024", "O", "1.2");
    happens(Role.INSPECTOR, heldBack, "HOLD_BACK", "recalled");
    record("NEW", "2024", "O", "1.2");
    released("THICK", "2024", "O", "1.6");
    released("HARD", "2024", "T3", "1.2");
    Batch gone = released("GONE", "2024", "O", "1.2");
    happens(Role.FITTER, gone, "USE_UP", "");
    long piece = begin("P-1");
    refused(piece, "HELD", "Batch HELD (cast 4711) is held back.");
    refused(piece, "NEW", "An inspector or the lead checks the certificate");
    refused(piece, "GONE", "is used up");
    refused(piece, "THICK", "Batch THICK (cast 4711) is 2024 O, 1.6 mm");
    refused(piece, "HARD", "is cut from 2024 O, 1.2 mm");
    refused(piece, "ELSEWHERE", "This build has no batch");
    refused(piece, "", "Released: B-1 (cast 4711), B-2 (cast 4711).");
    finish(piece, "B-2").andExpect(redirectedUrl("/pieces/" + piece));
  }

  @Test
  void a_cut_does_not_start_while_every_batch_of_its_metal_is_held_back() throws Exception {
    Batch batch = released("B-1", "2024", "O", "1.2");
    happens(Role.FITTER, batch, "HOLD_BACK", "recalled");
    long part = workshop.part("P-1");
    long piece = workshop.begin(part).id();
    page(
        Role.FITTER,
        "/pieces/" + piece,
        "No sheet of 2024 O, 1.2 mm is released: B-1 is held back.",
        "who release batches");
    send(Role.FITTER, "/pieces/" + piece + "/stages/" + CUT + "/start")
        .andExpect(status().isConflict());
    happens(Role.INSPECTOR, batch, "TAKE_BACK", "Ivo: tested");
    send(Role.FITTER, "/pieces/" + piece + "/stages/" + CUT + "/start")
        .andExpect(redirectedUrl("/pieces/" + piece));
  }

  @Test
  void an_inspector_puts_the_batch_of_a_piece_right_even_to_one_that_is_used_up() throws Exception {
    long piece = begin("P-1");
    finish(piece, "").andExpect(redirectedUrl("/pieces/" + piece));
    Batch batch = released("B-1", "2024", "O", "1.2");
    happens(Role.FITTER, batch, "USE_UP", "");
    String address = "/pieces/" + piece + "/batch";
    send(Role.FITTER, address, "batch", "B-1", "reason", "mark").andExpect(status().isForbidden());
    send(Role.INSPECTOR, address, "batch", "B-1", "reason", "")
        .andExpect(status().isUnprocessableContent());
    send(Role.INSPECTOR, address, "batch", "B-1", "reason", "mark on the web")
        .andExpect(redirectedUrl("/pieces/" + piece));
    page(Role.GUEST, "/pieces/" + piece, "put down the metal of", "mark on the web");
    send(Role.FITTER, "/pieces/" + piece + "/undo", "reason", "no")
        .andExpect(status().isForbidden());
  }

  @Test
  void the_sheet_of_a_whole_build_takes_one_statement() throws Throwable {
    for (int i = 1; i <= 5; i++) {
      record("B-" + i, "2024", "O", "1.2");
    }
    assertThat(StatementCount.of(entities, () -> sheets.ofBuild(workshop.buildId()))).isEqualTo(1);
    assertThat(sheets.ofBuild(workshop.buildId()).lacking("2024", "O", 1.2, false))
        .hasValueSatisfying(said -> assertThat(said).contains("B-4", "and 1 more"));
  }

  /** A piece whose cut has been started. */
  private long begin(String partNumber) throws Exception {
    long piece = workshop.begin(workshop.part(partNumber)).id();
    send(Role.FITTER, "/pieces/" + piece + "/stages/" + CUT + "/start")
        .andExpect(redirectedUrl("/pieces/" + piece));
    return piece;
  }

  private ResultActions finish(long piece, String batch) throws Exception {
    return send(Role.FITTER, "/pieces/" + piece + "/stages/" + CUT + "/finish", "batch", batch);
  }

  private void refused(long piece, String batch, String sentence) throws Exception {
    finish(piece, batch)
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString(sentence)));
  }

  private void undo(long piece, String reason) throws Exception {
    send(Role.FITTER, "/pieces/" + piece + "/undo", "reason", reason)
        .andExpect(redirectedUrl("/pieces/" + piece));
  }

  private Batch record(String mark, String alloy, String temper, String thickness)
      throws Exception {
    send(Role.FITTER, stock() + "/new", fields(mark, alloy, temper, thickness))
        .andExpect(status().is3xxRedirection());
    return batches.findByBuildIdAndMark(workshop.buildId(), mark).orElseThrow();
  }

  private Batch released(String mark, String alloy, String temper, String thickness)
      throws Exception {
    Batch batch = record(mark, alloy, temper, thickness);
    happens(Role.INSPECTOR, batch, "RELEASE", "Ivo").andExpect(status().is3xxRedirection());
    return batch;
  }

  private static String[] fields(
      String mark, String alloy, String temper, String thickness, String... more) {
    String[] known = {
      "mark",
      mark,
      "alloy",
      alloy,
      "temper",
      temper,
      "thickness",
      thickness,
      "heatNumber",
      "4711",
      "certificate",
      "C-2041",
      "receivedOn",
      "2026-05-04"
    };
    String[] all = Arrays.copyOf(known, known.length + more.length);
    System.arraycopy(more, 0, all, known.length, more.length);
    return all;
  }

  private ResultActions happens(Role role, Batch batch, String action, String words)
      throws Exception {
    return send(role, "/batches/" + batch.id() + "/condition", "action", action, "words", words);
  }

  private String stock() {
    return "/builds/" + workshop.buildId() + "/stock";
  }

  private void page(Role role, String address, String... words) throws Exception {
    ResultActions page = mvc.perform(get(address).with(signedIn(role))).andExpect(status().isOk());
    for (String one : words) {
      page.andExpect(content().string(containsString(one)));
    }
  }

  private ResultActions send(Role role, String address, String... fields) throws Exception {
    var request = post(address).with(signedIn(role)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }
}
