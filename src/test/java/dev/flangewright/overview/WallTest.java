package dev.flangewright.overview;

import static dev.flangewright.bench.AWorkshop.as;
import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.NextJob;
import dev.flangewright.bench.Piece;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import dev.flangewright.testing.StatementCount;
import jakarta.persistence.EntityManagerFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.MockMvc;

@DatabaseTest
class WallTest {

  private static final String FIRST_STAGE = "lay-out-and-cut";

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired ReadWall wall;
  @Autowired LogStage log;
  @Autowired EntityManagerFactory entities;
  @Autowired JdbcTemplate database;
  AWorkshop workshop;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
  }

  @Test
  void the_board_tells_who_is_at_what_and_what_waits_for_a_check_or_an_inspection() {
    Piece begun = begunOf("TW-F07-S1");
    Piece held = workshop.begin(workshop.part("TW-F07-S2"));
    workshop.bringTo(held, "edges");
    start(held, "edges");
    Piece ready = workshop.begin(workshop.part("TW-F07-S3"));
    workshop.bringTo(ready, "inspect");

    Wall shown = wall.of(workshop.buildId());

    assertThat(shown.onTheBench())
        .extracting(WallPiece::id, WallPiece::who, WallPiece::stage)
        .containsExactly(tuple(begun.id(), "fitter", "Lay out and cut"));
    assertThat(shown.waiting())
        .extracting(WallPiece::id)
        .containsExactlyInAnyOrder(held.id(), ready.id());
    assertThat(shown.logged()).hasSize(3);
    assertThat(shown.logged().get(0).partNumber()).isEqualTo("TW-F07-S3");
  }

  @Test
  void to_form_next_is_what_nobody_has_begun() {
    begunOf("TW-F07-S1");
    Piece between = workshop.begin(workshop.part("TW-F07-S2"));
    workshop.part("TW-F07-S3");

    assertThat(wall.of(workshop.buildId()).next())
        .extracting(NextJob::sentence)
        .containsExactly(
            "Start “Lay out and cut” on TW-F07-S2 piece " + between.number(),
            "Begin piece 1 of TW-F07-S3");
  }

  @Test
  void a_frame_is_done_when_its_every_part_has_a_piece_that_passed() {
    Piece first = begunOf("TW-F07-S1");
    Piece second = begunOf("TW-F07-S2");
    inspectedAs(first, "ACCEPTED");

    assertThat(wall.of(workshop.buildId()))
        .extracting(Wall::frames, Wall::framesDone, Wall::parts, Wall::accepted)
        .containsExactly(1, 0, 2L, 1L);

    inspectedAs(second, "CONCESSION");
    assertThat(wall.of(workshop.buildId()))
        .extracting(Wall::framesDone, Wall::accepted)
        .containsExactly(1, 2L);
  }

  @Test
  void a_guest_may_open_the_board_and_the_part_that_is_asked_for_anew() throws Exception {
    begunOf("TW-F07-S1");

    mvc.perform(get(address()).with(signedIn(Role.GUEST)))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("0 of 1 frames done"),
                        containsString("TW-F07-S1 piece 1"),
                        containsString("lay out and cut, fitter since "))));
    mvc.perform(get(address() + "/board").with(signedIn(Role.GUEST)))
        .andExpect(content().string(not(containsString("<html"))))
        .andExpect(
            content()
                .string(matchesPattern("(?s).*as of <time[^>]*>\\d\\d:\\d\\d:\\d\\d</time>.*")));
  }

  @Test
  void a_board_whose_sign_in_has_ended_is_told_so_instead_of_being_given_a_form() throws Exception {
    mvc.perform(get(address() + "/board").header("HX-Request", "true"))
        .andExpect(status().isUnauthorized());
    mvc.perform(get(address())).andExpect(redirectedUrl("/sign-in"));
  }

  @Test
  void a_poll_takes_no_more_statements_for_a_large_build_with_a_long_log() throws Throwable {
    AWorkshop large = AWorkshop.in(context);
    for (int part = 0; part < 60; part++) {
      Piece piece = large.begin(large.part("TW-F07-S" + part));
      if (part < 12) {
        large.bringTo(piece, "edges");
      }
    }
    begunOf("TW-F07-S1");

    statements(workshop); // the first request of all also asks whether there is an account
    long few = statements(workshop);
    assertThat(statements(large)).isEqualTo(few).isLessThanOrEqualTo(16);
  }

  private long statements(AWorkshop of) throws Throwable {
    return StatementCount.of(
        entities,
        () ->
            mvc.perform(get("/builds/" + of.buildId() + "/wall/board").with(signedIn(Role.GUEST)))
                .andExpect(status().isOk()));
  }

  private String address() {
    return "/builds/" + workshop.buildId() + "/wall";
  }

  private Piece begunOf(String partNumber) {
    Piece piece = workshop.begin(workshop.part(partNumber));
    start(piece, FIRST_STAGE);
    return piece;
  }

  private void start(Piece piece, String code) {
    as(Role.FITTER, () -> log.start(piece.id(), code, null, ""));
  }

  /** As an inspection would leave it. */
  private void inspectedAs(Piece piece, String state) {
    database.update("update piece set state = ? where id = ?", state, piece.id());
  }
}
