package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Contours from SVG paths over the wire. */
class ContourTest extends ApiTest {

  /** A third of a circle of 500 mm over the top, from right to left. */
  private static final String ARCH = "M 433.0127 -250 A 500 500 0 0 0 -433.0127 -250";

  @Test
  void an_arch_has_the_length_of_its_circle_and_stands_as_it_is_drawn() throws Exception {
    JsonNode contour = body(send("guest", "/forming/contour", request(ARCH, 20, 22, "")));
    assertThat(contour.get("lengthMm").asDouble()).isCloseTo(2 * Math.PI * 500 / 3, within(0.01));
    assertThat(contour.get("kind").asString()).isEqualTo("SHRINK");
    assertThat(contour.get("corners")).isEmpty();
    assertThat(contour.get("stations")).hasSize(54);
    for (JsonNode station : contour.get("stations")) {
      double x = station.get("xMm").asDouble();
      double y = station.get("yMm").asDouble();
      assertThat(Math.hypot(x, y)).isCloseTo(500, within(0.001));
      assertThat(y).isPositive();
      assertThat(station.get("widthMm").asDouble()).isEqualTo(22);
    }
    assertThat(contour.get("caution").asString()).contains("approved drawing");
  }

  @ParameterizedTest
  @CsvSource({"true, DOWN, STRETCH", "false, UP, STRETCH", "true, UP, SHRINK"})
  void direction_and_axis_decide_on_which_side_the_web_lies(
      boolean reversed, String yAxis, String kind) throws Exception {
    String more = ",\"reversed\":%s,\"yAxis\":\"%s\"".formatted(reversed, yAxis);
    send("guest", "/forming/contour", request(ARCH, 20, 22, more))
        .andExpect(jsonPath("$.kind").value(kind));
  }

  @Test
  void corners_are_told_with_their_turn() throws Exception {
    JsonNode corners =
        body(send("guest", "/forming/contour", request("M 0 0 H 100 V 100", 10, 20, "")))
            .get("corners");
    assertThat(corners).hasSize(1);
    assertThat(corners.get(0).get("station").asInt()).isEqualTo(11);
    assertThat(corners.get(0).get("turnDeg").asDouble()).isCloseTo(-90, within(1e-6));
  }

  @Test
  void a_path_that_cannot_be_read_is_refused_with_the_place() throws Exception {
    send("guest", "/forming/contour", request("M 0 0 L 100 zero", 10, 20, ""))
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.field").value("path"))
        .andExpect(jsonPath("$.position").value(13))
        .andExpect(jsonPath("$.detail", containsString("path, character 13")));
    send("guest", "/forming/contour", request("M0 0" + "l1 0".repeat(25_001), 10, 20, ""))
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.detail", containsString("longer than 100000 characters")));
  }

  @Test
  void values_out_of_range_and_missing_ones_are_named() throws Exception {
    send("guest", "/forming/contour", request(ARCH, 0, 20, ""))
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.field").value("spacingMm"))
        .andExpect(jsonPath("$.min").value(0.1));
    send("guest", "/forming/contour", "{\"path\":\"M 0 0 H 100\"}").andExpect(status().is(400));
  }

  private static String request(String path, double spacing, double width, String more) {
    return """
        {"path":"%s","spacingMm":%s,"bendAngleDeg":90,"widthMm":%s%s}"""
        .formatted(path, spacing, width, more);
  }
}
