package dev.flangewright.bench.web;

import static dev.flangewright.bench.AHeatTreatment.SET;
import static dev.flangewright.bench.AHeatTreatment.TREAT;
import static dev.flangewright.bench.AWorkshop.signedIn;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AHeatTreatment;
import dev.flangewright.people.Role;
import dev.flangewright.people.ShopClock;
import dev.flangewright.testing.DatabaseTest;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** The quench on the page of a piece and in the API. */
@DatabaseTest
class FormingWindowPageTest {

  @Autowired ApplicationContext context;
  @Autowired ShopClock clock;
  @Autowired MockMvc mvc;
  AHeatTreatment heat;

  @BeforeEach
  void openTheWorkshop() {
    heat = AHeatTreatment.in(context);
  }

  @Test
  void finishing_the_heat_treatment_asks_for_the_quench_and_the_page_counts_down()
      throws Exception {
    String piece = "/pieces/" + heat.piece("TW-F07-S1");
    show(0, Role.FITTER, piece)
        .andExpect(content().string(containsString("name=\"quenchedAt\"")))
        .andExpect(content().string(not(containsString("id=\"forming-window\""))));

    send(
            0,
            Role.FITTER,
            piece + "/stages/" + TREAT + "/finish",
            "quenchedAt",
            wall(-4),
            "hours",
            "1")
        .andExpect(redirectedUrl(piece));

    show(2, Role.VOLUNTEER, piece)
        .andExpect(content().string(containsString("window-word\">open</span>")))
        .andExpect(content().string(containsString("must be within")))
        .andExpect(content().string(containsString("data-closes-at=")))
        .andExpect(content().string(containsString("10 to 30 min")))
        .andExpect(content().string(containsString("light truing within 1-2 h")))
        .andExpect(content().string(containsString("approved heat-treatment specification")))
        .andExpect(content().string(containsString("Into the freezer")))
        .andExpect(content().string(not(containsString("Let it be formed"))));
  }

  @Test
  void a_time_of_the_quench_that_cannot_be_read_is_said_beside_what_was_typed() throws Exception {
    String piece = "/pieces/" + heat.piece("TW-F07-S1");
    send(0, Role.FITTER, piece + "/stages/" + TREAT + "/finish", "quenchedAt", "noon", "hours", "1")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("write it as 14:10")))
        .andExpect(content().string(containsString("value=\"noon\"")));
  }

  @Test
  void past_the_window_the_page_says_who_can_clear_it_and_offers_that_to_the_lead_alone()
      throws Exception {
    String piece = "/pieces/" + heat.quenched("TW-F07-S1");
    show(31, Role.VOLUNTEER, piece)
        .andExpect(content().string(containsString("Its forming window is past.")))
        .andExpect(content().string(not(containsString("Start set to template</button>"))))
        .andExpect(
            content().string(not(containsString("Let it be formed past its window</button>"))))
        .andExpect(content().string(not(containsString("Into the freezer</button>"))));
    show(31, Role.LEAD, piece)
        .andExpect(content().string(containsString("Let it be formed past its window</button>")));
    send(31, Role.VOLUNTEER, piece + "/late-forming", "lateReason", "it is soft")
        .andExpect(status().isForbidden());
    send(31, Role.LEAD, piece + "/late-forming", "lateReason", " ")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("reason is missing")));
    send(32, Role.LEAD, piece + "/late-forming", "lateReason", "coupons bent without a crack")
        .andExpect(redirectedUrl(piece));
    show(33, Role.VOLUNTEER, piece)
        .andExpect(content().string(containsString("Start set to template</button>")))
        .andExpect(content().string(containsString("coupons bent without a crack")));
  }

  @Test
  void the_freezer_is_entered_with_its_temperature_and_left_again() throws Exception {
    String piece = "/pieces/" + heat.quenched("TW-F07-S1");
    String treated = piece + "/stages/" + TREAT;
    send(4, Role.VOLUNTEER, treated + "/freeze", "celsius", "cold")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("write it as -20")));
    send(5, Role.VOLUNTEER, treated + "/freeze", "celsius", "-20,5")
        .andExpect(redirectedUrl(piece));
    show(60, Role.VOLUNTEER, piece)
        .andExpect(content().string(containsString("In at −20.5 °C (−4.9 °F)")))
        .andExpect(content().string(containsString("the clock stands still with 25 min left")))
        .andExpect(content().string(containsString("It is in the freezer.")));
    send(90, Role.VOLUNTEER, treated + "/thaw").andExpect(redirectedUrl(piece));
    show(91, Role.VOLUNTEER, piece)
        .andExpect(content().string(containsString("Start set to template</button>")))
        .andExpect(
            content()
                .string(containsString("(5 min before the freezer, 0 min in it, 1 min after)")));
    send(91, Role.VOLUNTEER, treated + "/thaw").andExpect(status().isConflict());
  }

  @Test
  void an_entry_from_a_phone_that_waited_is_taken_once_and_with_the_time_it_was_made()
      throws Exception {
    String piece = "/pieces/" + heat.quenched("TW-F07-S1");
    String key = UUID.randomUUID().toString();
    for (int time = 0; time < 2; time++) {
      send(
              200,
              Role.VOLUNTEER,
              piece + "/stages/" + TREAT + "/freeze",
              "celsius",
              "-20",
              "entryKey",
              key,
              "doneAt",
              heat.minute(6).toString())
          .andExpect(redirectedUrl(piece));
    }
    show(201, Role.VOLUNTEER, piece)
        .andExpect(content().string(containsString("with 24 min left")));
  }

  @Test
  void once_it_is_set_the_page_is_quiet_about_the_quench() throws Exception {
    String piece = "/pieces/" + heat.quenched("TW-F07-S1");
    send(3, Role.FITTER, piece + "/stages/" + SET + "/start");
    show(35, Role.FITTER, piece)
        .andExpect(content().string(containsString("Begun, and may be finished")));
    send(40, Role.FITTER, piece + "/stages/" + SET + "/finish").andExpect(redirectedUrl(piece));
    show(41, Role.FITTER, piece)
        .andExpect(content().string(not(containsString("id=\"forming-window\""))));
  }

  @Test
  void the_api_tells_the_window_and_takes_the_same_entries_once() throws Exception {
    long id = heat.piece("TW-F07-S1");
    String piece = "/api/v1/pieces/" + id;
    call(0, Role.FITTER, piece + "/stages/" + TREAT + "/finish", quenchedAt(-2), key())
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.formingWindow.state").value("OPEN"))
        .andExpect(jsonPath("$.formingWindow.spentMin").value(2))
        .andExpect(jsonPath("$.formingWindow.leftMin").value(28))
        .andExpect(jsonPath("$.formingWindow.closesAt").value(heat.minute(28).toString()))
        .andExpect(jsonPath("$.formingWindow.rows[0].source").value("shop rule"));
    String once = key();
    for (int time = 0; time < 2; time++) {
      call(3, Role.VOLUNTEER, piece + "/freezer/in", "{\"celsius\":-24}", once)
          .andExpect(jsonPath("$.formingWindow.freezer.length()").value(1))
          .andExpect(jsonPath("$.formingWindow.paused").value(true));
    }
    call(3, Role.VOLUNTEER, piece + "/freezer/in", "{}", key()).andExpect(status().isBadRequest());
    call(60, Role.VOLUNTEER, piece + "/freezer/out", "", key())
        .andExpect(jsonPath("$.formingWindow.leftMin").value(25));
    call(90, Role.VOLUNTEER, piece + "/stages/" + SET + "/start", "", key())
        .andExpect(status().isConflict());
    call(90, Role.VOLUNTEER, piece + "/late-forming", "{\"reason\":\"soft\"}", key())
        .andExpect(status().isForbidden());
    call(90, Role.LEAD, piece + "/late-forming", "{\"reason\":\"coupons held\"}", key())
        .andExpect(jsonPath("$.formingWindow.letLate.note").value("coupons held"));
    call(90, Role.FITTER, piece + "/quench", quenchedAt(89), key())
        .andExpect(status().isConflict());
    call(91, Role.VOLUNTEER, piece + "/stages/" + SET + "/start", "", key())
        .andExpect(status().isOk());
  }

  private String quenchedAt(double minutes) {
    return "{\"quenchedAt\":\"%s\"}".formatted(heat.minute(minutes));
  }

  private static String key() {
    return UUID.randomUUID().toString();
  }

  /** What the clock on the wall of the workshop shows. */
  private String wall(double minutes) {
    return DateTimeFormatter.ofPattern("HH:mm")
        .withZone(ZoneId.systemDefault())
        .format(heat.minute(minutes));
  }

  private ResultActions show(double minutes, Role role, String address) throws Exception {
    return perform(minutes, get(address).with(signedIn(role)));
  }

  private ResultActions send(double minutes, Role role, String address, String... fields)
      throws Exception {
    MockHttpServletRequestBuilder request = post(address).with(signedIn(role)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return perform(minutes, request);
  }

  private ResultActions call(double minutes, Role role, String address, String body, String key)
      throws Exception {
    MockHttpServletRequestBuilder request =
        post(address)
            .with(signedIn(role))
            .header("Idempotency-Key", key)
            .contentType(MediaType.APPLICATION_JSON);
    return perform(minutes, body.isEmpty() ? request : request.content(body));
  }

  private ResultActions perform(double minutes, MockHttpServletRequestBuilder request)
      throws Exception {
    Object[] done = new Object[1];
    clock.at(
        heat.minute(minutes),
        () -> {
          try {
            done[0] = mvc.perform(request);
          } catch (Exception e) {
            throw new IllegalStateException(e);
          }
        });
    return (ResultActions) done[0];
  }
}
