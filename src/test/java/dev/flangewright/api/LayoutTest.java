package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Holes, cutouts and trim allowance over the wire. */
class LayoutTest extends ApiTest {

  private static final double RADIUS = 500;
  private static final double QUARTER = RADIUS * Math.PI / 2;

  private static String layout(long version, String holes, String cutouts) {
    return """
        {"version":%d,"trimAllowanceMm":"2.50","holes":[%s],"cutouts":[%s]}"""
        .formatted(version, holes, cutouts);
  }

  private static final String HOLE =
      """
      {"label":"T1","kind":"TOOLING","xMm":"400.0","yMm":"200.00","diameterMm":"6.0"}""";

  private static final String CUTOUT =
      """
      {"flange":"outer","fromMm":"100","toMm":"250.0","depthMm":""}""";

  private long part() {
    return workshop.partOnACircle(1.2, 3, RADIUS, 20);
  }

  @Test
  void what_is_written_is_read_back_alike() throws Exception {
    String address = "/parts/" + part() + "/layout";
    JsonNode before = body(read("guest", address).andExpect(status().isOk()));
    assertThat(before.get("trimAllowanceMm").asString()).isEqualTo("0");
    assertThat(before.get("holes")).isEmpty();
    long version = before.get("version").asLong();
    replace("lead", address, layout(version, HOLE, CUTOUT)).andExpect(status().isOk());
    JsonNode after = body(read("guest", address));
    assertThat(after.get("trimAllowanceMm").asString()).isEqualTo("2.50");
    assertThat(after.get("holes").get(0)).isEqualTo(json.readTree(HOLE));
    assertThat(after.get("cutouts").get(0)).isEqualTo(json.readTree(CUTOUT));
    assertThat(after.get("version").asLong()).isGreaterThan(version);
    replace("lead", address, layout(version, "", ""))
        .andExpect(status().isConflict())
        .andExpect(jsonPath("$.detail").value(containsString("changed this part")));
    replace("lead", address, layout(after.get("version").asLong(), "", ""))
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.holes").isEmpty())
        .andExpect(jsonPath("$.cutouts").isEmpty());
  }

  /** On a circle demand goes with the length that is left. */
  @Test
  void the_figures_count_the_metal_that_is_left() throws Exception {
    long part = part();
    JsonNode whole = body(read("guest", "/parts/" + part + "/forming")).get("flanges").get(0);
    replace("lead", "/parts/" + part + "/layout", layout(0, HOLE, CUTOUT))
        .andExpect(status().isOk());
    JsonNode figures = body(read("guest", "/parts/" + part + "/forming"));
    JsonNode cut = figures.get("flanges").get(0);
    double share = 1 - 150 / QUARTER;
    assertThat(cut.get("takeOutMm").asDouble() / whole.get("takeOutMm").asDouble())
        .isCloseTo(share, within(1e-4));
    assertThat(cut.get("formedLengthMm").asDouble()).isCloseTo(QUARTER - 150, within(0.01));
    assertThat(cut.get("stations").valueStream().filter(s -> s.get("cutAway").asBoolean()))
        .isNotEmpty();
    JsonNode station = cut.get("stations").get(0);
    assertThat(station.get("sawTiltDeg").asDouble())
        .isCloseTo(station.get("blockAngleDeg").asDouble() - 90, within(1e-9));
    JsonNode blank = figures.get("blank");
    assertThat(blank.get("cut").get("allowanceMm").asDouble()).isEqualTo(2.5);
    assertThat(blank.get("cut").get("rectangle").get("lengthMm").asDouble()).isPositive();
    assertThat(blank.get("holes").get(0).get("label").asString()).isEqualTo("T1");
    assertThat(blank.get("holeWarnings").get(0).asString()).contains("Fewer than two tooling");
  }

  @Test
  void what_cannot_be_taken_is_refused_whole() throws Exception {
    String address = "/parts/" + part() + "/layout";
    replace("lead", address, layout(0, HOLE.replace("TOOLING", "KEYHOLE"), CUTOUT))
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.detail").value(containsString("kind")));
    replace("lead", address, layout(0, HOLE, CUTOUT.replace("outer", "inner")))
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.detail").value(containsString("no such flange")));
    replace("lead", address, layout(0, HOLE, CUTOUT.replace("250.0", "2500")))
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.detail").value(containsString("cutToMm is 2500")));
    replace("fitter", address, layout(0, HOLE, CUTOUT)).andExpect(status().isForbidden());
    replace("lead", "/parts/999999999/layout", layout(0, HOLE, CUTOUT))
        .andExpect(status().isNotFound());
    assertThat(body(read("guest", address)).get("holes")).isEmpty();
  }
}
