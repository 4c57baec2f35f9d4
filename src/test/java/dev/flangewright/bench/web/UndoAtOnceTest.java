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
import dev.flangewright.people.Role;
import dev.flangewright.people.ShopClock;
import dev.flangewright.testing.DatabaseTest;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@DatabaseTest
class UndoAtOnceTest {

  private static final Instant NOON = Instant.parse("2026-06-02T12:00:00Z");

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired ShopClock clock;
  @Autowired JdbcTemplate database;
  String piece;
  long pieceId;

  @BeforeEach
  void aStageWasStartedAtNoon() {
    AWorkshop workshop = AWorkshop.in(context);
    long part = workshop.part("TW-F07-S3L");
    at(
        0,
        () -> {
          pieceId = workshop.begin(part).id();
          piece = "/pieces/" + pieceId;
          send(Role.VOLUNTEER, piece + "/stages/lay-out-and-cut/start")
              .andExpect(status().is3xxRedirection());
        });
  }

  @Test
  void who_has_just_logged_something_is_told_and_may_undo_it_without_a_reason() {
    at(
        3,
        () -> {
          show(Role.VOLUNTEER)
              .andExpect(
                  content()
                      .string(
                          allOf(
                              containsString("Logged: started “Lay out and cut”."),
                              containsString("action=\"" + piece + "/log/1/undo\""),
                              containsString("after that under “Take back the last entry”"))));
          undo(Role.VOLUNTEER).andExpect(redirectedUrl(piece));
        });

    assertThat(log()).containsExactly("START true ", "UNDO false taken back at once");
  }

  @Test
  void pressed_twice_it_is_taken_back_once() {
    at(3, () -> undo(Role.VOLUNTEER).andExpect(redirectedUrl(piece)));
    at(4, () -> undo(Role.VOLUNTEER).andExpect(redirectedUrl(piece)));

    assertThat(log()).hasSize(2);
  }

  @Test
  void others_are_not_offered_it_and_refused() {
    at(
        3,
        () -> {
          show(Role.FITTER).andExpect(content().string(not(containsString("/log/1/undo"))));
          undo(Role.FITTER)
              .andExpect(status().isConflict())
              .andExpect(content().string(containsString("Only volunteer takes this entry back")));
          undo(Role.GUEST).andExpect(status().isForbidden());
        });

    assertThat(log()).containsExactly("START false ");
  }

  @Test
  void when_the_moment_is_over_the_ordinary_way_remains() {
    at(
        20,
        () -> {
          show(Role.VOLUNTEER)
              .andExpect(
                  content()
                      .string(
                          allOf(
                              not(containsString("/log/1/undo")),
                              containsString("Take back the last entry"))));
          undo(Role.VOLUNTEER)
              .andExpect(status().isConflict())
              .andExpect(content().string(containsString("The 10 seconds are over")));
        });

    assertThat(log()).containsExactly("START false ");
  }

  @Test
  void a_line_that_is_not_there_is_unknown() {
    at(3, () -> send(Role.VOLUNTEER, piece + "/log/7/undo").andExpect(status().isNotFound()));
  }

  private interface Act {
    void act() throws Exception;
  }

  private void at(int secondsAfterNoon, Act act) {
    clock.at(
        NOON.plusSeconds(secondsAfterNoon),
        () -> {
          try {
            act.act();
          } catch (Exception e) {
            throw new IllegalStateException(e);
          }
        });
  }

  private List<String> log() {
    return database.queryForList(
        "select action || ' ' || case when undone then 'true' else 'false' end || ' ' || note"
            + " from stage_entry where piece_id = ? order by ordinal",
        String.class,
        pieceId);
  }

  private ResultActions undo(Role who) throws Exception {
    return send(who, piece + "/log/1/undo");
  }

  private ResultActions send(Role who, String address) throws Exception {
    return mvc.perform(post(address).with(signedIn(who)).with(csrf()));
  }

  private ResultActions show(Role who) throws Exception {
    return mvc.perform(get(piece).with(signedIn(who)));
  }
}
