package dev.flangewright.photos.web;

import dev.flangewright.photos.Photo;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A photo, without its picture. */
record PhotoAnswer(
    long id,
    String caption,
    String who,
    Instant receivedAt,
    @Schema(description = "Of the full size, in pixels.") int width,
    @Schema(description = "Of the full size, in pixels.") int height,
    @Schema(description = "SHA-256 of the file as it came in, in hexadecimal.") String sha256,
    @Schema(description = "When it was taken off; null while it is shown.")
        @Nullable Instant takenOffAt,
    @Nullable String takenOffBy,
    @Nullable String takenOffWhy) {

  static PhotoAnswer of(Photo photo) {
    return new PhotoAnswer(
        photo.id(),
        photo.caption(),
        photo.who(),
        photo.receivedAt(),
        photo.width(),
        photo.height(),
        photo.sha256(),
        photo.takenOffAt(),
        photo.takenOffBy(),
        photo.takenOffWhy());
  }
}
