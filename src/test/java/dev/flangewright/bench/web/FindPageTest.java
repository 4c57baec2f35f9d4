package dev.flangewright.bench.web;

import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.Piece;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

@DatabaseTest
class FindPageTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired LogStage log;
  @Autowired JdbcTemplate database;
  AWorkshop workshop;
  String number;

  @BeforeEach
  void openTheWorkshop() {
    workshop = AWorkshop.in(context);
    number = "FND-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase();
  }

  @Test
  void a_part_number_opens_the_piece_in_work() throws Exception {
    long part = workshop.part(number);
    scrapped(workshop.begin(part));
    Piece inWork = workshop.begin(part);

    typed(number.toLowerCase()).andExpect(redirectedUrl("/pieces/" + inWork.id()));
    typed(" " + number.replace("-", " ") + " ").andExpect(redirectedUrl("/pieces/" + inWork.id()));
  }

  @Test
  void without_a_piece_in_work_the_newest_is_opened_and_without_any_the_part_sheet()
      throws Exception {
    long part = workshop.part(number);
    typed(number).andExpect(redirectedUrl("/parts/" + part));

    scrapped(workshop.begin(part));
    Piece second = workshop.begin(part);
    scrapped(second);
    typed(number).andExpect(redirectedUrl("/pieces/" + second.id()));
  }

  @Test
  void a_piece_number_behind_it_opens_that_piece() throws Exception {
    long part = workshop.part(number);
    Piece first = workshop.begin(part);
    scrapped(first);
    workshop.begin(part);

    typed(number + " 1").andExpect(redirectedUrl("/pieces/" + first.id()));
    typed(number + " 7")
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("piece 2, in work; there is no piece 7")));
  }

  @Test
  void several_that_contain_what_was_typed_are_listed_and_none_says_so() throws Exception {
    workshop.part(number + "L");
    workshop.part(number + "R");

    typed(number)
        .andExpect(status().isOk())
        .andExpect(
            content().string(allOf(containsString(number + "L"), containsString(number + "R"))));
    typed(number + "_").andExpect(content().string(containsString("No part number is like")));
  }

  @Test
  void another_builds_parts_are_not_found_from_here() throws Exception {
    AWorkshop.in(context).part(number);

    typed(number).andExpect(content().string(containsString("No part number is like")));
  }

  @Test
  void a_label_opens_its_piece_in_whichever_build_it_is() throws Exception {
    Piece piece = workshop.begin(workshop.part(number));

    label(number).andExpect(redirectedUrl("/pieces/" + piece.id()));
    label(number + "/1").andExpect(redirectedUrl("/pieces/" + piece.id()));
  }

  @Test
  void where_several_builds_use_the_part_number_a_label_lets_one_choose() throws Exception {
    Piece here = workshop.begin(workshop.part(number));
    Piece there = otherPieceOf(AWorkshop.in(context));

    label(number)
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("href=\"/pieces/" + here.id() + "\""),
                        containsString("href=\"/pieces/" + there.id() + "\""),
                        containsString("<span>piece 1, in work</span>, Hull "))));
  }

  @Test
  void a_number_with_a_stroke_in_it_can_stand_on_a_label_too() throws Exception {
    long part = workshop.part(number + "/A");

    label(number + "/A").andExpect(redirectedUrl("/parts/" + part));
  }

  @Test
  void what_is_typed_is_shown_as_text() throws Exception {
    typed("<b>x</b>").andExpect(content().string(not(containsString("<b>x</b>"))));
  }

  private Piece otherPieceOf(AWorkshop other) {
    return other.begin(other.part(number));
  }

  /** As an inspection would leave it; how it is scrapped is another module's. */
  private void scrapped(Piece piece) {
    database.update("update piece set state = 'SCRAPPED' where id = ?", piece.id());
  }

  private ResultActions typed(String text) throws Exception {
    return mvc.perform(
        get("/builds/" + workshop.buildId() + "/find")
            .param("q", text)
            .with(signedIn(Role.VOLUNTEER)));
  }

  private ResultActions label(String text) throws Exception {
    return mvc.perform(get("/p/" + text).with(signedIn(Role.VOLUNTEER)));
  }
}
