package dev.flangewright.parts.web;

import dev.flangewright.forming.EdgeError;
import dev.flangewright.forming.GaugedRest;
import dev.flangewright.parts.GaugeReading;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a gauge reading leaves to do. */
record GaugeAnswer(
    String sentence,
    @Schema(description = "Which way the edge is off.") EdgeError edge,
    @Schema(description = "Natural strain still to be given, its magnitude.") double strain,
    @Schema(description = "Of edge still to take out or put in, mm.") double millimetres,
    @Schema(description = "True where the true rest can only be larger.") boolean lowerBound,
    @Schema(description = "About how many; 0 when nothing is left.") int passes,
    int firstStation,
    int lastStation,
    @Schema(description = "That was reckoned with; null where the gauge needs none.")
        @Nullable Double webDepthMm,
    List<GaugedRest.Zone> zones,
    String caution) {

  static GaugeAnswer of(GaugeReading reading) {
    GaugedRest left = reading.left();
    return new GaugeAnswer(
        reading.sentence(),
        left.error(),
        left.rest().strain(),
        left.rest().millimetres(),
        left.rest().lowerBound(),
        left.passes(),
        reading.first().number(),
        reading.last().number(),
        reading.webDepthMm(),
        left.zones(),
        InJson.CAUTION);
  }
}
