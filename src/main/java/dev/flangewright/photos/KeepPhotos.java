package dev.flangewright.photos;

import dev.flangewright.people.Refused;
import dev.flangewright.people.SignedIn;
import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Adds photos and takes them off. The same file sent twice for one subject is one photo, so a photo
 * whose answer was lost on the way can be sent again.
 */
@Service
public class KeepPhotos {

  private final PhotoSubjects subjects;
  private final Photos photos;
  private final PhotoImages images;
  private final TransactionTemplate transaction;
  private final Clock clock;

  KeepPhotos(
      PhotoSubjects subjects,
      Photos photos,
      PhotoImages images,
      TransactionTemplate transaction,
      Clock clock) {
    this.subjects = subjects;
    this.photos = photos;
    this.images = images;
    this.transaction = transaction;
    this.clock = clock;
  }

  /**
   * Adds a photo, or finds the one that was added of the same file.
   *
   * @throws Refused if there is no such subject, the caption is too long, or the same photo was
   *     taken off it
   * @throws AccessDeniedException if the account may not add photos of that kind
   */
  public Photo add(SubjectKind kind, long subjectId, TakenPhoto taken, String caption) {
    kind.refuseUnlessOpen();
    PhotoSubject subject = subjects.of(kind, subjectId);
    try {
      return Objects.requireNonNull(
          transaction.execute(
              status ->
                  earlier(kind, subjectId, taken)
                      .orElseGet(() -> store(kind, subjectId, subject.buildId(), taken, caption))));
    } catch (DataIntegrityViolationException lost) {
      if (TransactionSynchronizationManager.isActualTransactionActive()) {
        throw lost; // the caller's transaction is broken: nothing can be read in it any more
      }
      return earlier(kind, subjectId, taken).orElseThrow(() -> lost);
    }
  }

  private Optional<Photo> earlier(SubjectKind kind, long subjectId, TakenPhoto taken) {
    Optional<Photo> same =
        photos.findBySubjectKindAndSubjectIdAndSha256(kind, subjectId, taken.sha256());
    same.filter(Photo::isTakenOff).ifPresent(KeepPhotos::refuseAgain);
    return same;
  }

  private static void refuseAgain(Photo photo) {
    throw Refused.conflict(
        "The same photo was taken off by %s: %s. Take a new one."
            .formatted(photo.takenOffBy(), photo.takenOffWhy()));
  }

  private Photo store(
      SubjectKind kind, long subjectId, long buildId, TakenPhoto taken, String caption) {
    Photo photo =
        photos.saveAndFlush(
            new Photo(kind, subjectId, buildId, taken, caption, SignedIn.name(), clock.instant()));
    for (PhotoSize size : PhotoSize.values()) {
      PhotoImage unused = images.save(new PhotoImage(photo.id(), size, taken.jpeg(size)));
    }
    return photo;
  }

  /**
   * Takes a photo off the pages; it stays in the record.
   *
   * @throws Refused if there is no such photo, it is off already, or the reason is missing
   * @throws AccessDeniedException if the account may not add photos of that kind
   */
  @Transactional
  public Photo takeOff(long photoId, String why) {
    Photo photo = photos.findById(photoId).orElseThrow(() -> Refused.unknown("photo", photoId));
    photo.subjectKind().refuseUnlessOpen();
    photo.takeOff(SignedIn.name(), clock.instant(), why);
    return photo;
  }
}
