package dev.flangewright.bench.web;

import dev.flangewright.bench.GaugeLogs;
import dev.flangewright.bench.LogReading;
import dev.flangewright.bench.Pieces;
import dev.flangewright.parts.GaugeEntry;
import dev.flangewright.people.Refused;
import dev.flangewright.receipts.Ask;
import dev.flangewright.receipts.EntryKey;
import dev.flangewright.receipts.Once;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Gauge readings taken on a piece, over HTTP. */
@RestController
@RequestMapping("/api/v1/pieces/{id}/gauge-readings")
@Tag(name = "Pieces")
class ReadingsApi {

  private final Pieces pieces;
  private final GaugeLogs readings;
  private final LogReading log;
  private final Once once;

  ReadingsApi(Pieces pieces, GaugeLogs readings, LogReading log, Once once) {
    this.pieces = pieces;
    this.readings = readings;
    this.log = log;
    this.once = once;
  }

  @GetMapping
  @Operation(summary = "List the gauge readings of a piece", description = "Oldest first.")
  @Transactional(readOnly = true)
  public List<ReadingAnswer> all(@PathVariable long id) {
    if (!pieces.existsById(id)) {
      throw Refused.unknown("piece", id);
    }
    return readings.findByPieceIdOrderById(id).stream().map(ReadingAnswer::of).toList();
  }

  @PostMapping
  @Operation(
      summary = "Log a gauge reading",
      description =
          "Written as on the page; the answer says what is left to do. Needs an account that logs"
              + " work.")
  public ReadingAnswer add(
      @PathVariable long id,
      @Parameter(description = EntryKey.MEANING)
          @RequestHeader(name = EntryKey.HEADER, required = false)
          @Nullable UUID key,
      @RequestBody GaugeEntry written) {
    Ask ask = new Ask(key, null, written.toString());
    long reading = once.of(ask, "piece " + id, () -> log.of(id, written).id());
    return readings
        .findById(reading)
        .map(ReadingAnswer::of)
        .orElseThrow(() -> Refused.unknown("reading", reading));
  }
}
