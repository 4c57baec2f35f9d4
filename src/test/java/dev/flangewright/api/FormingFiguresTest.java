package dev.flangewright.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.startsWith;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The figures as they come over the wire, against sources outside this program. */
class FormingFiguresTest extends ApiTest {

  private static final double MM_PER_INCH = 25.4;

  /**
   * FAA-H-8083-31, Aviation Maintenance Technician Handbook, Airframe vol. 1, ch. 4, U-channel
   * example: R = 0.16 in, T = 0.040 in, 90°. Setback 0.200 in; bend allowance 0.27 in, printed with
   * two decimals and taken from a chart for R = 0.156 in.
   */
  @Test
  void the_handbooks_channel_has_its_setback_and_bend_allowance() throws Exception {
    JsonNode figures = flange("PLAIN", null, 0.040 * MM_PER_INCH, 0.16 * MM_PER_INCH, 25.4, "");
    assertThat(inches(figures, "setbackMm")).isCloseTo(0.200, within(0.0005));
    assertThat(inches(figures, "bendAllowanceMm")).isCloseTo(0.27, within(0.01));
  }

  /**
   * Sheet Metal Workbook, 6th ed. (internet edition 2012), 90 Degree Bends: R = 0.032 in, T = 0.050
   * in. Bend allowance 0.085 in; deduction 2·setback − allowance = 0.079 in; three decimals.
   */
  @Test
  void the_workbooks_bend_has_its_allowance_and_deduction() throws Exception {
    JsonNode figures = flange("PLAIN", null, 0.050 * MM_PER_INCH, 0.032 * MM_PER_INCH, 25.4, "");
    double allowance = inches(figures, "bendAllowanceMm");
    assertThat(allowance).isCloseTo(0.085, within(0.0005));
    assertThat(2 * inches(figures, "setbackMm") - allowance).isCloseTo(0.079, within(0.0005));
    assertThat(inches(figures, "straightBlankMm")).isCloseTo(1 + 0.085 - 0.082, within(0.0005));
  }

  /**
   * Closed form of the axisymmetric stretch flange, sharp root, isotropic: ρ/R = (1 −
   * 1.5·h/R)^(2/3) (derived; the solutions of Wang and Wenner 1974 and Dudra and Shah 1988 are
   * named from memory). R = 150 mm, h = 20 mm: +16.04 %, t/t0 = 0.9283. The sheet is 0.1 mm, bent
   * sharp, with k = 0, so that the tangent line stands 0.1 mm inside the mould line and the bend
   * uses no metal.
   */
  @Test
  void a_sharp_stretch_flange_stretches_as_the_closed_form_says() throws Exception {
    JsonNode figures = flange("STRETCH", 149.9, 0.1, 0, 20.1, ",\"kFactor\":0,\"anisotropy\":1");
    double strain = Math.expm1(figures.get("edgeStrain").asDouble());
    assertThat(strain).isCloseTo(0.1604, within(0.0001));
    assertThat(figures.get("edgeThicknessMm").asDouble() / 0.1).isCloseTo(0.9283, within(0.0001));
    double blankRadius = 150 * Math.pow(1 - 1.5 * 20 / 150, 2.0 / 3);
    assertThat(figures.get("blankBeyondTangentMm").asDouble())
        .isCloseTo(150 - blankRadius, within(1e-6));
    assertThat(figures.get("gatherMmPerMetre").asDouble())
        .isCloseTo((blankRadius / 150 - 1) * 1000, within(1e-6));
  }

  /** As above, convex: ρ/R = (1 + 1.5·h/R)^(2/3); R = 500 mm, h = 20 mm: −3.81 %, t/t0 = 1.0196. */
  @Test
  void a_sharp_shrink_flange_shrinks_as_the_closed_form_says() throws Exception {
    JsonNode figures = flange("SHRINK", 500.1, 0.1, 0, 20.1, ",\"kFactor\":0");
    assertThat(Math.expm1(figures.get("edgeStrain").asDouble())).isCloseTo(-0.0381, within(0.0001));
    assertThat(figures.get("edgeThicknessMm").asDouble() / 0.1).isCloseTo(1.0196, within(0.0001));
    assertThat(figures.get("gatherMmPerMetre").asDouble())
        .isCloseTo((Math.pow(1 + 1.5 * 20 / 500, 2.0 / 3) - 1) * 1000, within(1e-6));
    assertThat(figures.get("caution").asString()).contains("approved drawing");
  }

  /**
   * The same closed form along a quarter of a circle in the register. The part is bent with the
   * default k, whose bend of ρ = 0.045 mm moves 0.03 mm of the 20 mm height: 0.2 % of the gather.
   */
  @Test
  void a_part_on_a_circle_is_figured_alike_at_every_station() throws Exception {
    long part = workshop.partOnACircle(0.1, 0, 500.1, 20.1);
    JsonNode figures = body(read("guest", "/parts/" + part + "/forming"));
    JsonNode flange = figures.get("flanges").get(0);
    double quarter = Math.PI / 2;
    double gather = (Math.pow(1 + 1.5 * 20 / 500, 2.0 / 3) - 1) * 500 * quarter;
    assertThat(flange.get("contourLengthMm").asDouble()).isCloseTo(500.1 * quarter, within(0.01));
    assertThat(flange.get("tangentLengthMm").asDouble()).isCloseTo(500 * quarter, within(0.01));
    assertThat(flange.get("gatherMm").asDouble()).isCloseTo(gather, within(0.004 * gather));
    assertThat(flange.get("stations")).hasSize(Workshop.STATIONS);
    for (int i = 0; i < Workshop.STATIONS; i++) {
      JsonNode station = flange.get("stations").get(i);
      assertThat(station.get("station").asInt()).isEqualTo(i + 1);
      assertThat(station.get("arcMm").asDouble())
          .isCloseTo(500.1 * Math.toRadians(2.0 * i), within(0.01));
      assertThat(station.get("radiusMm").asDouble()).isCloseTo(500.1, within(0.1));
      assertThat(Math.expm1(station.get("edgeStrain").asDouble()))
          .isCloseTo(-0.0381, within(0.0002));
    }
    assertThat(flange.get("peakEdgeStrain").asDouble())
        .isEqualTo(
            flange
                .get("stations")
                .get(flange.get("peakStation").asInt() - 1)
                .get("edgeStrain")
                .asDouble());
    assertThat(figures.get("blank").get("outline").size()).isEqualTo(Workshop.STATIONS);
    assertThat(figures.get("metal").get("densityKgM3").get("source").asString()).isNotBlank();
  }

  @Test
  void a_plain_section_needs_no_radius_and_has_none_on_the_wire() throws Exception {
    JsonNode figures = flange("PLAIN", null, 1.2, 3, 20, "");
    assertThat(figures.get("tangentRadiusMm").isNull()).isTrue();
    assertThat(figures.get("edgeStrain").asDouble()).isZero();
    send("guest", "/forming/flange", section("SHRINK", null, 1.2, 3, 20, ""))
        .andExpect(status().is(422))
        .andExpect(jsonPath("$.detail").value(startsWith("contourRadiusMm")));
  }

  private JsonNode flange(
      String kind, Double radius, double thickness, double bend, double width, String more)
      throws Exception {
    return body(
        send("guest", "/forming/flange", section(kind, radius, thickness, bend, width, more))
            .andExpect(status().isOk()));
  }

  static String section(
      String kind, Double radius, double thickness, double bend, double width, String more) {
    return """
        {"kind":"%s","contourRadiusMm":%s,"thicknessMm":%s,"insideBendRadiusMm":%s,\
        "flangeWidthMm":%s,"bendAngleDeg":90%s}"""
        .formatted(kind, radius, thickness, bend, width, more);
  }

  private static double inches(JsonNode figures, String name) {
    return figures.get(name).asDouble() / MM_PER_INCH;
  }
}
