package dev.flangewright.parts.web;

import dev.flangewright.parts.Build;
import java.time.Instant;

/** A build. */
record BuildAnswer(long id, String name, String note, Instant createdAt) {

  static BuildAnswer of(Build build) {
    return new BuildAnswer(build.id(), build.name(), build.note(), build.createdAt());
  }
}
