package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** A part supposed otherwise must be figured as if it had been drawn so. */
class SupposeTest extends ApiTest {

  private static final double RADIUS = 500.1;

  @Test
  void what_is_supposed_of_sheet_and_widths_is_figured_as_if_drawn_so() throws Exception {
    long drawn = workshop.partOnACircle(1.2, 3, RADIUS, 20);
    long drawnSo = workshop.partOnACircle(2, 5, RADIUS, 24);
    JsonNode supposed =
        supposed(
            drawn,
            """
            {"thickness":"2.000000","insideBendRadiusMm":5.000000,"flanges":[{"name":"outer",
            "workingWidthMm":24.000000,"finishedWidthMm":24.000000}]}""");
    JsonNode asDrawn = body(read("guest", "/parts/" + drawnSo + "/forming"));
    assertThat(figures(supposed)).isEqualTo(figures(asDrawn));
    assertThat(supposed.get("blank")).isEqualTo(asDrawn.get("blank"));
    assertThat(supposed.get("metal")).isEqualTo(asDrawn.get("metal"));
    assertThat(supposed.get("risk")).isEqualTo(asDrawn.get("risk"));
  }

  /** The closed form of a sharp right-angled shrink flange, as in FormingFiguresTest. */
  @Test
  void bending_further_brings_a_flatter_flange_to_the_closed_form() throws Exception {
    long part = workshop.partOnACircle(0.1, 0, RADIUS, 20.1);
    JsonNode flatter = supposed(part, "{\"flanges\":[{\"name\":\"outer\",\"turnDeg\":-60}]}");
    JsonNode asDrawn = supposed(part, "{}");
    JsonNode stations = flatter.get("flanges").get(0).get("stations");
    assertThat(stations.get(0).get("bendAngleDeg").asDouble()).isEqualTo(30);
    assertThat(Math.abs(peak(flatter))).isLessThan(Math.abs(peak(asDrawn)));
    assertThat(Math.expm1(peak(asDrawn))).isBetween(-0.0383, -0.0379);
  }

  @Test
  void another_temper_brings_that_tempers_values_and_another_edge_its_limit() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, RADIUS, 20);
    JsonNode soft =
        supposed(
            part,
            "{\"temper\":\"O\",\"flanges\":[{\"name\":\"outer\",\"edgeCondition\":\"FILED\"}]}");
    JsonNode asDrawn = supposed(part, "{}");
    assertThat(soft.get("metal").get("temper").asString()).isEqualTo("O");
    assertThat(soft.get("metal").get("proofMpa").get("value").asDouble())
        .isLessThan(asDrawn.get("metal").get("proofMpa").get("value").asDouble());
    assertThat(soft.get("flanges").get(0).get("edgeCondition").asString()).isEqualTo("FILED");
  }

  @Test
  void nothing_supposed_is_the_drawing_and_nothing_is_stored() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, RADIUS, 20);
    JsonNode before = body(read("guest", "/parts/" + part + "/forming"));
    assertThat(supposed(part, "{}")).isEqualTo(before);
    JsonNode unused = supposed(part, "{\"thickness\":\"3\"}");
    assertThat(body(read("guest", "/parts/" + part + "/forming"))).isEqualTo(before);
  }

  @Test
  void what_cannot_be_is_refused_and_named() throws Exception {
    long part = workshop.partOnACircle(1.2, 3, RADIUS, 20);
    refused(part, "{\"thickness\":\"thick\"}", "thickness_mm");
    refused(part, "{\"flanges\":[{\"name\":\"outer\",\"turnDeg\":75}]}", "station 1");
    refused(part, "{\"flanges\":[{\"name\":\"outer\",\"workingWidthMm\":12}]}", "working_width_mm");
    refused(part, "{\"flanges\":[{\"name\":\"under\"}]}", "no flange of that name");
    send("guest", "/parts/999999999/forming", "{}").andExpect(status().isNotFound());
  }

  private void refused(long part, String body, String words) throws Exception {
    send("guest", "/parts/" + part + "/forming", body)
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.detail").value(containsString(words)));
  }

  private JsonNode supposed(long part, String body) throws Exception {
    return body(send("guest", "/parts/" + part + "/forming", body).andExpect(status().isOk()));
  }

  private static JsonNode figures(JsonNode part) {
    return part.get("flanges").get(0).get("stations");
  }

  private static double peak(JsonNode part) {
    return part.get("flanges").get(0).get("peakEdgeStrain").asDouble();
  }
}
