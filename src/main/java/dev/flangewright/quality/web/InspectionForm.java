package dev.flangewright.quality.web;

import dev.flangewright.people.Refused;
import dev.flangewright.quality.Finding;
import dev.flangewright.quality.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * An inspection as typed.
 *
 * @param seen the version of the piece that the page showed
 */
record InspectionForm(
    @Nullable Outcome outcome,
    @Nullable String cause,
    @Nullable String stage,
    @Nullable String note,
    @Nullable Long seen) {

  Finding finding() {
    if (outcome == null) {
      throw Refused.unacceptable("outcome is missing: choose one.");
    }
    return new Finding(outcome, cause, stage, note == null ? "" : note, seen);
  }
}
