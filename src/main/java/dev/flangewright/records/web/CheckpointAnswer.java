package dev.flangewright.records.web;

import dev.flangewright.records.Checkpoint;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;

/** Where a chain stands. */
record CheckpointAnswer(
    @Schema(description = "build-ID, or installation.") String chain,
    @Schema(description = "Entries there are.") long count,
    @Schema(description = "SHA-256 of the last entry, hexadecimal; zeros if there is none.")
        String head,
    Instant takenAt,
    @Schema(description = "All of it in one line, as a verification takes it.") String text) {

  static CheckpointAnswer of(Checkpoint now) {
    return new CheckpointAnswer(now.chain(), now.count(), now.head(), now.at(), now.text());
  }
}
