package dev.flangewright.quality;

import dev.flangewright.photos.Galleries;
import dev.flangewright.photos.ReadPhotos;
import dev.flangewright.photos.SubjectKind;
import java.time.Clock;
import java.util.List;
import org.springframework.stereotype.Component;

/** Puts inspections into lists, each with the photos taken at it. */
@Component
public class ListInspections {

  private final ReadPhotos photos;
  private final Clock clock;

  ListInspections(ReadPhotos photos, Clock clock) {
    this.photos = photos;
    this.clock = clock;
  }

  /** In the order given. */
  public List<InspectionLine> lines(List<Inspection> inspections) {
    List<Long> ids = inspections.stream().map(Inspection::id).toList();
    Galleries galleries = photos.galleries(SubjectKind.INSPECTION, ids);
    return inspections.stream()
        .map(one -> InspectionLine.of(one, galleries.of(one.id()), clock.instant()))
        .toList();
  }
}
