package dev.flangewright.quality;

import dev.flangewright.parts.Build;
import dev.flangewright.photos.PhotoSubject;
import dev.flangewright.photos.Photographed;
import dev.flangewright.photos.SubjectKind;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Says which inspections can be photographed: all; the record itself is not changed by it. */
@Component
class PhotographedInspection implements Photographed {

  private final Inspections inspections;

  PhotographedInspection(Inspections inspections) {
    this.inspections = inspections;
  }

  @Override
  public SubjectKind kind() {
    return SubjectKind.INSPECTION;
  }

  @Override
  @Transactional(readOnly = true)
  public Optional<PhotoSubject> find(long inspectionId) {
    return inspections.findById(inspectionId).map(PhotographedInspection::subject);
  }

  private static PhotoSubject subject(Inspection inspection) {
    Build build = inspection.piece().part().build();
    return new PhotoSubject(
        build.id(),
        build.name(),
        inspection.piece().label() + ", " + InspectionLine.what(inspection),
        "/pieces/" + inspection.piece().id());
  }
}
