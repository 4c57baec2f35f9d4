package dev.flangewright.bench.web;

import dev.flangewright.bench.GaugeLog;
import dev.flangewright.forming.EdgeError;
import dev.flangewright.parts.GaugeEntry;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A gauge reading taken on a piece. */
record ReadingAnswer(
    long id,
    @Schema(description = "As it was written.") GaugeEntry written,
    @Schema(description = "What the bench was told.") String answer,
    EdgeError edge,
    @Schema(description = "Natural strain left, its magnitude.") double strain,
    @Schema(description = "Of edge still to take out or put in, mm.") double millimetres,
    int passes,
    int firstStation,
    int lastStation,
    @Schema(description = "The stage the piece stood at.") @Nullable String stage,
    @Schema(description = "Of the calculation that told it.") int modelVersion,
    String who,
    Instant readAt) {

  static ReadingAnswer of(GaugeLog log) {
    return new ReadingAnswer(
        log.id(),
        log.written(),
        log.answer(),
        log.edgeError(),
        log.strain(),
        log.millimetres(),
        log.passes(),
        log.firstStation(),
        log.lastStation(),
        log.stageCode(),
        log.modelVersion(),
        log.who(),
        log.readAt());
  }
}
