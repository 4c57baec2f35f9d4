package dev.flangewright.quality.web;

import dev.flangewright.quality.ScrapCause;
import io.swagger.v3.oas.annotations.media.Schema;

/** A scrap cause that is offered. */
record CauseAnswer(
    @Schema(description = "Names the cause in an inspection.", example = "edge-not-deburred")
        String code,
    String name,
    String usualReason,
    String prevention,
    String source) {

  static CauseAnswer of(ScrapCause cause) {
    return new CauseAnswer(
        cause.code(), cause.name(), cause.usualReason(), cause.prevention(), cause.source());
  }
}
