package dev.flangewright.photos;

import java.util.Arrays;
import java.util.Optional;

/**
 * The segments of a JPEG file before its first scan (ISO/IEC 10918-1, B.1 and B.2), as far as they
 * are needed: where the Exif data lies, and whether the picture has an end.
 */
final class JpegFile {

  private static final int MARKER = 0xFF;
  private static final int APP1 = 0xE1;
  private static final int SCAN = 0xDA;
  private static final int END = 0xD9;
  private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

  private final byte[] file;

  JpegFile(byte[] file) {
    this.file = file;
  }

  /** The TIFF structure inside the Exif segment (CIPA DC-008, 4.7.2); empty if there is none. */
  Optional<byte[]> exif() {
    int at = 2;
    while (isSegment(at) && (file[at + 1] & 0xFF) != SCAN) {
      int next = at + 2 + length(at);
      if ((file[at + 1] & 0xFF) == APP1 && next <= file.length && saysExif(at + 4)) {
        return Optional.of(Arrays.copyOfRange(file, at + 4 + EXIF.length, next));
      }
      at = next;
    }
    return Optional.empty();
  }

  /** Whether the marker for the end follows the first scan: a cut file has none. */
  boolean hasEnd() {
    int at = 2;
    while (isSegment(at) && (file[at + 1] & 0xFF) != SCAN) {
      at += 2 + length(at);
    }
    for (int i = at + 2; i + 1 < file.length; i++) {
      if ((file[i] & 0xFF) == MARKER && (file[i + 1] & 0xFF) == END) {
        return true;
      }
    }
    return false;
  }

  private boolean isSegment(int at) {
    return at + 4 <= file.length && (file[at] & 0xFF) == MARKER && length(at) >= 2;
  }

  /** Of a segment, its two bytes of length included. */
  private int length(int at) {
    return (file[at + 2] & 0xFF) << 8 | file[at + 3] & 0xFF;
  }

  private boolean saysExif(int at) {
    for (int i = 0; i < EXIF.length; i++) {
      if (at + i >= file.length || file[at + i] != EXIF[i]) {
        return false;
      }
    }
    return true;
  }
}
