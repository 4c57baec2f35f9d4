package dev.flangewright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.httpBasic;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.ResultActions;

/** What is refused, with which status, and whether the answer names the field and its range. */
class BadInputTest extends ApiTest {

  private static final String GOOD =
      """
      {"kind":"SHRINK","contourRadiusMm":500,"thicknessMm":1.2,"insideBendRadiusMm":3,\
      "flangeWidthMm":20,"bendAngleDeg":90,"kFactor":0.446,"anisotropy":1.0}""";

  @ParameterizedTest
  @CsvSource({
    "thicknessMm, 1.2, 0.05, 0.1, 10",
    "thicknessMm, 1.2, 47, 0.1, 10",
    "insideBendRadiusMm, 3, -1, 0, 100",
    "flangeWidthMm, 20, 501, 0, 500",
    "bendAngleDeg, 90, 165, 0, 165",
    "bendAngleDeg, 90, 0, 0, 165",
    "kFactor, 0.446, 1.5, 0, 1",
    "anisotropy, 1.0, 0, 0.1, 5"
  })
  void a_value_out_of_range_is_refused_with_its_range(
      String field, String good, double bad, double min, double max) throws Exception {
    problem(422, form(GOOD.replace("\"" + field + "\":" + good, "\"" + field + "\":" + bad)))
        .andExpect(jsonPath("$.field").value(field))
        .andExpect(jsonPath("$.value").value(bad))
        .andExpect(jsonPath("$.min").value(min))
        .andExpect(jsonPath("$.max").value(max))
        .andExpect(jsonPath("$.detail", containsString(field)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"kind", "thicknessMm", "insideBendRadiusMm", "flangeWidthMm"})
  void a_missing_field_is_named(String field) throws Exception {
    String without = GOOD.replaceFirst("\"" + field + "\":[^,]+,", "");
    problem(400, form(without)).andExpect(jsonPath("$.field").value(field));
  }

  @Test
  void a_flange_wider_than_its_contour_allows_is_refused_with_the_limit() throws Exception {
    String tight = GOOD.replace("SHRINK", "STRETCH").replace("500", "30").replace(":20,", ":40,");
    problem(422, form(tight))
        .andExpect(jsonPath("$.field").value("flangeWidthMm"))
        .andExpect(jsonPath("$.max").isNumber())
        .andExpect(jsonPath("$.detail", containsString("wider than its contour allows")));
  }

  @Test
  void not_a_number_is_refused_as_a_word_and_as_a_string() throws Exception {
    problem(400, form(GOOD.replace(":1.2", ":NaN")))
        .andExpect(jsonPath("$.field").value("thicknessMm"));
    problem(422, form(GOOD.replace(":1.2", ":\"NaN\"")))
        .andExpect(jsonPath("$.field").value("thicknessMm"));
    problem(422, form(GOOD.replace(":1.2", ":1e999")))
        .andExpect(jsonPath("$.field").value("thicknessMm"));
  }

  @Test
  void a_number_with_its_unit_is_refused_and_named() throws Exception {
    problem(400, form(GOOD.replace(":1.2", ":\"0.047 in\"")))
        .andExpect(jsonPath("$.field").value("thicknessMm"));
    problem(400, form(GOOD.replace("thicknessMm", "thicknessIn")))
        .andExpect(jsonPath("$.field").value("thicknessIn"));
  }

  @Test
  void an_unknown_kind_is_answered_with_the_kinds_there_are() throws Exception {
    problem(400, form(GOOD.replace("SHRINK", "CURLY")))
        .andExpect(jsonPath("$.field").value("kind"))
        .andExpect(jsonPath("$.allowed", hasItem("STRETCH")));
    problem(422, form(GOOD.replace("SHRINK", "MIXED")))
        .andExpect(jsonPath("$.field").value("kind"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "[]", "{", "{\"kind\":", "<a/>", "null", "\"text\""})
  void a_body_that_is_no_json_object_is_refused(String body) throws Exception {
    problem(400, form(body));
  }

  @Test
  void a_page_of_parts_has_a_size_with_limits() throws Exception {
    long build = workshop.build().id();
    problem(400, read("guest", "/builds/" + build + "/parts?size=501"))
        .andExpect(jsonPath("$.field").value("size"))
        .andExpect(jsonPath("$.max").value(500));
    problem(400, read("guest", "/builds/" + build + "/parts?page=-1"))
        .andExpect(jsonPath("$.field").value("page"));
    problem(400, read("guest", "/builds/" + build + "/parts?size=many"))
        .andExpect(jsonPath("$.field").value("size"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/builds/999999",
        "/builds/999999/parts",
        "/builds/999999/overview",
        "/parts/999999",
        "/parts/999999/forming",
        "/pieces/999999",
        "/nowhere"
      })
  void what_is_not_there_is_not_found(String address) throws Exception {
    problem(404, read("guest", address));
  }

  @Test
  void an_id_that_is_no_number_is_named() throws Exception {
    problem(400, read("guest", "/builds/seven")).andExpect(jsonPath("$.field").value("id"));
  }

  @Test
  void a_method_that_an_address_does_not_take_is_refused_with_those_it_takes() throws Exception {
    problem(405, mvc.perform(delete("/api/v1/builds").with(account("lead"))))
        .andExpect(header().exists("Allow"));
  }

  @Test
  void a_body_that_is_not_json_by_its_own_word_is_refused() throws Exception {
    problem(
        415,
        mvc.perform(
            post("/api/v1/builds")
                .with(account("lead"))
                .contentType(MediaType.TEXT_PLAIN)
                .content("Tidewing")));
  }

  @Test
  void a_build_needs_a_name_that_is_free() throws Exception {
    problem(400, send("lead", "/builds", "{}")).andExpect(jsonPath("$.field").value("name"));
    problem(422, send("lead", "/builds", "{\"name\":\"  \"}"));
    problem(422, send("lead", "/builds", "{\"name\":\"" + "x".repeat(121) + "\"}"));
    send("lead", "/builds", "{\"name\":\"One of a kind\"}").andExpect(status().isCreated());
    problem(409, send("lead", "/builds", "{\"name\":\"One of a kind\"}"));
  }

  @Test
  void a_name_with_html_or_a_formula_in_it_is_a_text_like_any_other() throws Exception {
    for (String name : new String[] {"<script>alert(1)</script>", "=1+1"}) {
      String address =
          send("lead", "/builds", "{\"name\":\"" + name + "\"}")
              .andExpect(status().isCreated())
              .andExpect(jsonPath("$.name").value(name))
              .andReturn()
              .getResponse()
              .getHeader("Location");
      mvc.perform(get(address).with(account("guest")))
          .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_JSON))
          .andExpect(header().string("X-Content-Type-Options", "nosniff"))
          .andExpect(jsonPath("$.name").value(name));
    }
  }

  @Test
  void nobody_gets_in_without_an_account() throws Exception {
    mvc.perform(get("/api/v1/builds").with(httpBasic("lead", PASSWORD))).andExpect(status().isOk());
    problem(401, mvc.perform(get("/api/v1/builds")))
        .andExpect(header().string("WWW-Authenticate", containsString("Basic")));
    problem(
            401,
            mvc.perform(get("/api/v1/builds").with(httpBasic("lead", "not the right password"))))
        .andExpect(header().string("WWW-Authenticate", containsString("Basic")));
    problem(401, mvc.perform(get("/api/v1/openapi")));
  }

  @Test
  void a_change_asked_for_by_another_sites_page_is_refused() throws Exception {
    mvc.perform(
            post("/api/v1/builds")
                .with(account("lead"))
                .header("Sec-Fetch-Site", "cross-site")
                .contentType(MediaType.APPLICATION_JSON)
                .content("{\"name\":\"Forged\"}"))
        .andExpect(status().isForbidden());
  }

  private ResultActions form(String body) throws Exception {
    return send("guest", "/forming/flange", body);
  }

  static ResultActions problem(int status, ResultActions answer) throws Exception {
    return answer
        .andExpect(status().is(status))
        .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
        .andExpect(jsonPath("$.status").value(status))
        .andExpect(jsonPath("$.type").isNotEmpty())
        .andExpect(jsonPath("$.title").isNotEmpty())
        .andExpect(jsonPath("$.detail").isNotEmpty());
  }
}
