package dev.flangewright.parts.web;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.parts.GaugeKind;
import dev.flangewright.parts.SampleRegister;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.testing.DatabaseTest;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@DatabaseTest
class GaugePageTest {

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts accounts;

  private long part;

  @BeforeEach
  void aPart(@Autowired ApplicationContext application) {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "a long enough one");
    }
    SampleRegister sample = new SampleRegister(application);
    part = sample.part(sample.build("Build " + UUID.randomUUID()), "P-1");
  }

  @ParameterizedTest
  @EnumSource
  void every_gauge_has_its_form(GaugeKind kind) throws Exception {
    read(page().param("gauge", kind.name()))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("What the " + kind.label() + " reads")));
  }

  @Test
  void a_gap_is_answered_with_millimetres_stations_and_a_drawing() throws Exception {
    read(page()
            .param("gauge", "STRAIGHT_EDGE")
            .param("flange", "outer")
            .param("gapAt", "OTHER_FACE")
            .param("webDepthMm", "60")
            .param("fromStation", "2")
            .param("toStation", "8")
            .param("reading", "1.0"))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("to take out between stations 2 and 8"),
                        containsString("A lower bound."),
                        containsString("id=\"gauged\""))));
  }

  @Test
  void a_part_with_one_contour_wants_the_depth_of_its_web() throws Exception {
    read(page().param("flange", "outer").param("gapAt", "OTHER_FACE").param("reading", "1"))
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("web_depth_mm: it must be given")));
  }

  private MockHttpServletRequestBuilder page() {
    return get("/parts/" + part + "/gauge");
  }

  private ResultActions read(MockHttpServletRequestBuilder request) throws Exception {
    return mvc.perform(request.with(user("guest")));
  }
}
