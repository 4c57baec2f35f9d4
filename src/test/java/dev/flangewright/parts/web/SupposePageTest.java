package dev.flangewright.parts.web;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.parts.SampleRegister;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.testing.DatabaseTest;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

@DatabaseTest
class SupposePageTest {

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

  @Test
  void the_page_opens_with_the_drawings_values_and_says_that_nothing_is_changed() throws Exception {
    read(page())
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("nothing is changed"),
                        containsString("value=\"1.2\""),
                        containsString("As supposed"))));
  }

  @Test
  void a_thicker_sheet_is_compared_with_the_one_drawn() throws Exception {
    read(page().param("thicknessMm", "2.5"))
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("1.200"),
                        containsString("2.500"),
                        not(containsString("nothing is changed")))));
    read(get("/parts/" + part)).andExpect(content().string(not(containsString("2.500"))));
  }

  @Test
  void what_cannot_be_read_is_said_beside_its_field() throws Exception {
    read(page().param("flanges[0].name", "outer").param("flanges[0].turnDeg", "much"))
        .andExpect(status().is(422))
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("turn_deg &quot;much&quot;"),
                        containsString("value=\"much\""))));
  }

  @Test
  void a_flange_that_could_not_be_made_is_refused_with_its_station() throws Exception {
    read(page().param("flanges[0].name", "outer").param("flanges[0].turnDeg", "80"))
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("station 1")));
  }

  private MockHttpServletRequestBuilder page() {
    return get("/parts/" + part + "/suppose");
  }

  private ResultActions read(MockHttpServletRequestBuilder request) throws Exception {
    return mvc.perform(request.with(user("guest")));
  }
}
