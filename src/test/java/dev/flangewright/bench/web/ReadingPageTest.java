package dev.flangewright.bench.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.GaugeLog;
import dev.flangewright.bench.GaugeLogs;
import dev.flangewright.bench.Piece;
import dev.flangewright.forming.EdgeError;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@DatabaseTest
class ReadingPageTest {

  @Autowired MockMvc mvc;
  @Autowired GaugeLogs readings;

  private AWorkshop workshop;
  private Piece piece;

  @BeforeEach
  void aPiece(@Autowired ApplicationContext context) {
    workshop = AWorkshop.in(context);
    piece = workshop.begin(workshop.part("TW-F07-S3L"));
  }

  @Test
  void a_reading_is_kept_as_written_and_answered_at_once() throws Exception {
    String there =
        as(Role.VOLUNTEER, gap("1.20"))
            .andExpect(status().is3xxRedirection())
            .andReturn()
            .getResponse()
            .getRedirectedUrl();
    List<GaugeLog> kept = readings.findByPieceIdOrderById(piece.id());
    assertThat(kept).hasSize(1);
    assertThat(kept.get(0).written().reading()).isEqualTo("1.20");
    assertThat(kept.get(0).edgeError()).isEqualTo(EdgeError.TOO_LONG);
    assertThat(kept.get(0).millimetres()).isPositive();
    as(Role.VOLUNTEER, get(there))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("to take out between stations 2 and 8"),
                        containsString("id=\"gauged\""),
                        containsString("Readings so far"))));
    as(Role.VOLUNTEER, get("/pieces/" + piece.id()))
        .andExpect(content().string(containsString("read 1.20 on the outer edge")));
  }

  @Test
  void a_reading_that_cannot_be_used_comes_back_as_typed_and_nothing_is_kept() throws Exception {
    as(Role.VOLUNTEER, gap("a hair"))
        .andExpect(status().is(422))
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("reading &quot;a hair&quot;"),
                        containsString("value=\"a hair\""))));
    assertThat(readings.findByPieceIdOrderById(piece.id())).isEmpty();
  }

  @Test
  void who_only_reads_cannot_log_a_reading() throws Exception {
    as(Role.GUEST, gap("1")).andExpect(status().isForbidden());
    as(Role.GUEST, get("/pieces/" + piece.id() + "/gauge")).andExpect(status().isOk());
  }

  @Test
  void a_reading_of_another_piece_is_not_shown_here() throws Exception {
    Piece other = workshop.begin(workshop.part("TW-F07-S4L"));
    as(Role.VOLUNTEER, gap("1"));
    long entry = readings.findByPieceIdOrderById(piece.id()).get(0).id();
    as(Role.VOLUNTEER, get("/pieces/" + other.id() + "/gauge").param("entry", "" + entry))
        .andExpect(status().isNotFound());
  }

  @Test
  void readings_come_and_go_over_http_too() throws Exception {
    as(
            Role.VOLUNTEER,
            post("/api/v1/pieces/" + piece.id() + "/gauge-readings")
                .contentType("application/json")
                .content(
                    "{\"flange\":\"outer\",\"gauge\":\"ANGLE\",\"station\":\"5\",\"reading\":\"45\"}"))
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.edge").value("TOO_LONG"))
        .andExpect(jsonPath("$.written.station").value("5"));
    as(Role.GUEST, get("/api/v1/pieces/" + piece.id() + "/gauge-readings"))
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.length()").value(1));
  }

  private MockHttpServletRequestBuilder gap(String reading) {
    return post("/pieces/" + piece.id() + "/gauge")
        .param("flange", "outer")
        .param("gauge", "STRAIGHT_EDGE")
        .param("gapAt", "OTHER_FACE")
        .param("webDepthMm", "60")
        .param("fromStation", "2")
        .param("toStation", "8")
        .param("reading", reading);
  }

  private ResultActions as(Role role, MockHttpServletRequestBuilder request) throws Exception {
    return mvc.perform(request.with(AWorkshop.signedIn(role)).with(csrf()));
  }
}
