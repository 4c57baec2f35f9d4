package dev.flangewright.quality.web;

import dev.flangewright.quality.Inspection;
import dev.flangewright.quality.InspectionLine;
import java.time.Instant;

/** An inspection in the list of a whole build: with its part. */
record InspectionRow(String partNumber, InspectionLine line) {

  static InspectionRow of(Inspection inspection, Instant now) {
    return new InspectionRow(
        inspection.piece().part().partNumber(), InspectionLine.of(inspection, now));
  }
}
