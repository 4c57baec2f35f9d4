package dev.flangewright.quality.web;

import dev.flangewright.people.Refused;
import dev.flangewright.quality.Inspections;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Reads an inspection for an answer, with its piece as it stands now. */
@Component
class ReadInspection {

  private final Inspections inspections;

  ReadInspection(Inspections inspections) {
    this.inspections = inspections;
  }

  @Transactional(readOnly = true)
  InspectionAnswer of(long id) {
    return inspections
        .findById(id)
        .map(InspectionAnswer::of)
        .orElseThrow(() -> Refused.unknown("inspection", id));
  }
}
