package dev.flangewright.photos.web;

import dev.flangewright.photos.Photo;
import dev.flangewright.photos.PhotoSize;
import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/**
 * A picture as it goes out. It never changes, so the browser of whoever may see it keeps it; opened
 * by itself it may load and run nothing.
 */
final class PhotoFile {

  static final String POLICY = "default-src 'none'; sandbox";

  private static final CacheControl KEPT =
      CacheControl.maxAge(Duration.ofDays(365)).cachePrivate().immutable();

  private PhotoFile() {}

  static ResponseEntity<byte[]> of(Photo photo, PhotoSize size, byte[] jpeg) {
    return ResponseEntity.ok()
        .contentType(MediaType.IMAGE_JPEG)
        .cacheControl(KEPT)
        .eTag(photo.sha256() + "-" + size)
        .header("Content-Security-Policy", POLICY)
        .body(jpeg);
  }
}
