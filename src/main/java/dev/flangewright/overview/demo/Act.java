package dev.flangewright.overview.demo;

import dev.flangewright.people.Role;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** One entry of the demo's history; the account that makes it is named after its role. */
record Act(
    Instant at,
    Role by,
    String partNumber,
    Kind kind,
    String stage,
    @Nullable Double hours,
    String cause,
    String note) {

  /** What is done to the part's latest piece; {@code BEGIN} makes one. */
  enum Kind {
    BEGIN,
    START,
    CHECK,
    FINISH,
    UNDO,
    ACCEPT,
    CONCEDE,
    REWORK,
    SCRAP
  }
}
