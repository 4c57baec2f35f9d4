package dev.flangewright.bench.web;

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

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.BeginPiece;
import dev.flangewright.bench.Piece;
import dev.flangewright.bench.Pieces;
import dev.flangewright.bench.TwinOf;
import dev.flangewright.parts.Hand;
import dev.flangewright.parts.Part;
import dev.flangewright.people.Refused;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;

/** Pieces of a left and a right part of one segment, begun together. */
@DatabaseTest
class PairTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired Pieces pieces;
  @Autowired BeginPiece begin;
  @Autowired TwinOf twins;
  AWorkshop workshop;
  long left;
  long right;

  @BeforeEach
  void twoHands() {
    workshop = AWorkshop.in(context);
    left = workshop.part("TW-F07-S3L", "S3", Hand.LEFT);
    right = workshop.part("TW-F07-S3R", "S3", Hand.RIGHT);
  }

  @Test
  void both_hands_are_begun_at_once_and_each_page_links_the_other_and_warns() throws Exception {
    mvc.perform(get("/parts/" + left).with(signedIn(Role.FITTER)))
        .andExpect(content().string(containsString("Begin both hands, this and TW-F07-S3R")));

    var answer =
        mvc.perform(post("/parts/" + left + "/pair").with(signedIn(Role.FITTER)).with(csrf()));

    Piece ofLeft = pieces.findByPartIdOrderByNumber(left).get(0);
    Piece ofRight = pieces.findByPartIdOrderByNumber(right).get(0);
    answer.andExpect(redirectedUrl("/pieces/" + ofLeft.id()));
    mvc.perform(get("/pieces/" + ofLeft.id()).with(signedIn(Role.GUEST)))
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("This is the <strong>left</strong> hand"),
                        containsString("href=\"/pieces/" + ofRight.id() + "\""),
                        containsString("Check the hand of blank and block"),
                        containsString("together with TW-F07-S3R piece 1"))));
    mvc.perform(get("/pieces/" + ofRight.id()).with(signedIn(Role.GUEST)))
        .andExpect(content().string(containsString("href=\"/pieces/" + ofLeft.id() + "\"")));
    mvc.perform(get("/parts/" + left).with(signedIn(Role.FITTER)))
        .andExpect(content().string(not(containsString("Begin both hands"))));
  }

  @Test
  void neither_is_begun_if_one_of_them_cannot_be() {
    workshop.begin(right);

    assertThatThrownBy(() -> AWorkshop.as(Role.FITTER, () -> begin.pairOf(left)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("TW-F07-S3R is in work already");
    assertThat(pieces.findByPartIdOrderByNumber(left)).isEmpty();
  }

  @Test
  void a_part_without_another_hand_has_no_twin() {
    long middle = workshop.part("TW-F07-S1", "S1", Hand.NONE);
    long lonely = workshop.part("TW-F07-S2L", "S2", Hand.LEFT);

    assertThat(twins.part(middle)).isEmpty();
    assertThat(twins.part(lonely)).isEmpty();
    assertThatThrownBy(() -> AWorkshop.as(Role.FITTER, () -> begin.pairOf(lonely)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("no twin");
  }

  @Test
  void where_several_would_do_none_is_the_twin() {
    long another = workshop.part("TW-F07-S3R2", "S3", Hand.RIGHT);

    assertThat(List.of(left, right, another)).allMatch(part -> twins.part(part).isEmpty());
  }

  @Test
  void twins_find_each_other() {
    assertThat(twins.part(left).map(Part::partNumber)).contains("TW-F07-S3R");
    assertThat(twins.part(right).map(Part::partNumber)).contains("TW-F07-S3L");
  }
}
