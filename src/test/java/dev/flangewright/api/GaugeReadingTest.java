package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Gauge readings over the wire, each made by reckoning the gauge forward in another way. */
class GaugeReadingTest extends ApiTest {

  /** 1 mm sheet bent to 3 mm inside: setback 4 mm, so a width of 24 mm has 20 mm of flat. */
  private static final double FLAT = 20;

  private static final double DEPTH = 60;
  private static final double RADIUS = 500;
  private static final double TO_STATION_16 = RADIUS * Math.toRadians(30);

  private long part;

  @BeforeEach
  void aPart() {
    part = workshop.partOnACircle(1, 3, RADIUS, FLAT + 4);
  }

  /**
   * Elastic beam theory, integrated slice by slice: 0.4 % too long at the edge bows the part by κ =
   * ∫ε*(y)(y − ȳ)dA / I, which opens κ·L²/8 under a straight-edge of the chord's length.
   */
  @Test
  void the_gap_under_a_straight_edge_gives_back_the_strain_that_made_it() throws Exception {
    double strain = 0.004;
    double chord = 2 * RADIUS * Math.sin(Math.toRadians(15));
    double gap = bow(strain) * chord * chord / 8;
    JsonNode left = read("STRAIGHT_EDGE", "\"OTHER_FACE\"", gap);
    assertThat(left.get("strain").asDouble()).isCloseTo(strain, within(1e-4 * strain));
    assertThat(left.get("millimetres").asDouble())
        .isCloseTo(strain * TO_STATION_16, within(1e-3 * strain * TO_STATION_16));
    assertThat(left.get("edge").asString()).isEqualTo("TOO_LONG");
    assertThat(left.get("lowerBound").asBoolean()).isTrue();
    assertThat(left.get("sentence").asString())
        .startsWith("Still at least 1.0 mm to take out between stations 1 and 16");
    assertThat(sum(left)).isCloseTo(left.get("millimetres").asDouble(), within(1e-9));
  }

  @Test
  void the_same_gap_on_the_flanges_face_is_an_edge_too_short() throws Exception {
    JsonNode left = read("STRAIGHT_EDGE", "\"FLANGE_FACE\"", 1);
    assertThat(left.get("edge").asString()).isEqualTo("TOO_SHORT");
    assertThat(left.get("sentence").asString()).contains("to put in");
  }

  /** Volume constancy, isotropic: an edge 2 % thicker has shrunk by 2·ln 1.02 = 3.96 %. */
  @Test
  void a_micrometer_tells_what_the_edge_has_taken() throws Exception {
    JsonNode before = read("MICROMETER", "null", 1.0);
    JsonNode after = read("MICROMETER", "null", 1.02);
    double demand = before.get("strain").asDouble();
    assertThat(after.get("strain").asDouble())
        .isCloseTo(Math.max(0, demand - 2 * Math.log(1.02)), within(1e-9));
    assertThat(after.get("lowerBound").asBoolean()).isFalse();
  }

  @Test
  void a_flange_fully_down_has_nothing_left() throws Exception {
    assertThat(read("ANGLE", "null", 90).get("passes").asInt()).isZero();
    assertThat(read("ANGLE", "null", 45).get("millimetres").asDouble()).isPositive();
  }

  @Test
  void readings_that_cannot_be_are_refused_by_name() throws Exception {
    refused("{\"flange\":\"outer\",\"gauge\":\"STRAIGHT_EDGE\",\"reading\":1}", "gap_at");
    refused(
        "{\"flange\":\"outer\",\"gauge\":\"STRAIGHT_EDGE\",\"gapAt\":\"OTHER_FACE\",\"reading\":1}",
        "web_depth_mm");
    refused("{\"flange\":\"outer\",\"gauge\":\"ANGLE\",\"reading\":45}", "station");
    refused("{\"flange\":\"under\",\"gauge\":\"ANGLE\",\"reading\":45}", "flange");
    refused("{\"flange\":\"outer\",\"gauge\":\"ANGLE\",\"station\":3,\"reading\":450}", "reading");
    send("guest", "/parts/" + part + "/gauge", "{\"flange\":\"outer\",\"gauge\":\"LASER\"}")
        .andExpect(status().isBadRequest());
  }

  private void refused(String body, String words) throws Exception {
    send("guest", "/parts/" + part + "/gauge", body)
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.detail").value(containsString(words)));
  }

  private JsonNode read(String gauge, String gapAt, double reading) throws Exception {
    String body =
        """
        {"flange":"outer","gauge":"%s","station":8,"fromStation":1,"toStation":16,
        "gapAt":%s,"webDepthMm":%s,"reading":%.9f}"""
            .formatted(gauge, gapAt, DEPTH, reading);
    return body(send("guest", "/parts/" + part + "/gauge", body).andExpect(status().isOk()));
  }

  /** κ of an angle section whose flange is longer by a strain that falls linearly to its root. */
  private static double bow(double strain) {
    int slices = 100_000;
    double dy = FLAT / slices;
    double centroid = FLAT * FLAT / 2 / (DEPTH + FLAT);
    double moment = 0;
    double inertia = DEPTH * (1.0 / 12 + centroid * centroid);
    for (int i = 0; i < slices; i++) {
      double y = (i + 0.5) * dy;
      moment += strain * y / FLAT * (y - centroid) * dy;
      inertia += (y - centroid) * (y - centroid) * dy;
    }
    return moment / inertia;
  }

  private static double sum(JsonNode left) {
    double sum = 0;
    for (JsonNode zone : left.get("zones")) {
      sum += zone.get("millimetres").asDouble();
    }
    return sum;
  }
}
