package dev.flangewright.bench;

import dev.flangewright.photos.Photo;
import dev.flangewright.photos.ReadPhotos;
import dev.flangewright.photos.SubjectKind;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Tells which photos of a piece were added, and which were taken off and why. */
@Component
@Order(15)
class PhotoEvents implements PieceEvents {

  private final ReadPhotos photos;

  PhotoEvents(ReadPhotos photos) {
    this.photos = photos;
  }

  @Override
  public List<PieceEvent> of(long pieceId) {
    return photos.of(SubjectKind.PIECE, pieceId).stream().flatMap(PhotoEvents::events).toList();
  }

  private static Stream<PieceEvent> events(Photo photo) {
    PieceEvent added =
        new PieceEvent(
            photo.receivedAt(), photo.who(), "added photo " + photo.id(), photo.caption());
    Instant at = photo.takenOffAt();
    return at == null
        ? Stream.of(added)
        : Stream.of(
            added,
            new PieceEvent(
                at,
                String.valueOf(photo.takenOffBy()),
                "took photo " + photo.id() + " off",
                String.valueOf(photo.takenOffWhy())));
  }
}
