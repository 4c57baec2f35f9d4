package dev.flangewright.photos;

import dev.flangewright.people.LogTime;
import java.time.Instant;

/**
 * A photo on a page.
 *
 * @param alt what stands in its place for whoever does not see it
 * @param width of the small size, in pixels
 * @param height of the small size, in pixels
 * @param takenOff by whom, when and why; empty while it is shown
 */
public record PhotoLine(
    long id,
    String alt,
    String caption,
    String who,
    String when,
    int width,
    int height,
    String takenOff) {

  static PhotoLine of(Photo photo, Instant now) {
    String when = LogTime.of(photo.receivedAt(), now);
    double scale =
        Math.min(
            1, (double) PhotoSize.SMALL.longSidePx() / Math.max(photo.width(), photo.height()));
    return new PhotoLine(
        photo.id(),
        photo.caption().isEmpty()
            ? "Photo without a caption, by " + photo.who() + ", " + when
            : photo.caption(),
        photo.caption(),
        photo.who(),
        when,
        Shrunk.scaled(photo.width(), scale),
        Shrunk.scaled(photo.height(), scale),
        takenOff(photo, now));
  }

  private static String takenOff(Photo photo, Instant now) {
    Instant at = photo.takenOffAt();
    return at == null
        ? ""
        : "taken off by %s, %s: %s"
            .formatted(photo.takenOffBy(), LogTime.of(at, now), photo.takenOffWhy());
  }
}
