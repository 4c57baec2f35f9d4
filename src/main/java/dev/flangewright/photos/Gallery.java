package dev.flangewright.photos;

import java.time.Instant;
import java.util.List;

/**
 * The photos of one subject, as a page shows them.
 *
 * @param address where they stand together and more are added
 * @param open whether the reader may add photos and take them off
 * @param takenOff those that stay in the record alone
 */
public record Gallery(
    long subjectId, String address, boolean open, List<PhotoLine> shown, List<PhotoLine> takenOff) {

  static Gallery of(SubjectKind kind, long subjectId, List<Photo> photos, Instant now) {
    return new Gallery(
        subjectId,
        kind.address(subjectId),
        kind.isOpen(),
        photos.stream().filter(p -> !p.isTakenOff()).map(p -> PhotoLine.of(p, now)).toList(),
        photos.stream().filter(Photo::isTakenOff).map(p -> PhotoLine.of(p, now)).toList());
  }
}
