package dev.flangewright.photos;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The photos of several subjects of one kind. */
public final class Galleries {

  private final SubjectKind kind;
  private final Map<Long, List<Photo>> photos;
  private final Instant now;

  Galleries(SubjectKind kind, Collection<Photo> photos, Instant now) {
    this.kind = kind;
    this.photos = photos.stream().collect(Collectors.groupingBy(Photo::subjectId));
    this.now = now;
  }

  /** Of one of them; empty if it has none. */
  public Gallery of(long subjectId) {
    return Gallery.of(kind, subjectId, photos.getOrDefault(subjectId, List.of()), now);
  }
}
