package dev.flangewright.photos;

import dev.flangewright.people.Refused;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads photos: which there are without their pictures, and the pictures one at a time. */
@Service
@Transactional(readOnly = true)
public class ReadPhotos {

  private final Photos photos;
  private final PhotoImages images;
  private final Clock clock;

  ReadPhotos(Photos photos, PhotoImages images, Clock clock) {
    this.photos = photos;
    this.images = images;
    this.clock = clock;
  }

  /** Of one subject, those taken off included, oldest first. */
  public List<Photo> of(SubjectKind kind, long subjectId) {
    return photos.findBySubjectKindAndSubjectIdInOrderById(kind, List.of(subjectId));
  }

  /** Of one subject, as a page shows them. */
  public Gallery gallery(SubjectKind kind, long subjectId) {
    return Gallery.of(kind, subjectId, of(kind, subjectId), clock.instant());
  }

  /** The same of several, in one query. */
  public Galleries galleries(SubjectKind kind, Collection<Long> subjectIds) {
    return new Galleries(
        kind, photos.findBySubjectKindAndSubjectIdInOrderById(kind, subjectIds), clock.instant());
  }

  /**
   * @throws Refused if there is no such photo
   */
  public Photo photo(long photoId) {
    return photos.findById(photoId).orElseThrow(() -> Refused.unknown("photo", photoId));
  }

  /**
   * The picture as a JPEG file; one of a photo that was taken off, too.
   *
   * @throws Refused if there is no such photo
   */
  public byte[] jpeg(long photoId, PhotoSize size) {
    return images.jpeg(photoId, size).orElseThrow(() -> Refused.unknown("photo", photoId));
  }

  /**
   * @throws Refused unless the photo is one of that subject, and not taken off
   */
  public void refuseUnlessOf(SubjectKind kind, long subjectId, long photoId) {
    Photo photo = photo(photoId);
    if (photo.subjectKind() != kind || photo.subjectId() != subjectId || photo.isTakenOff()) {
      throw Refused.unacceptable("photo " + photoId + " is none of this, or was taken off.");
    }
  }
}
