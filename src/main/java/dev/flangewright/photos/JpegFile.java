package dev.flangewright.photos;

import java.util.Arrays;
import java.util.Optional;

/**
 * The segments of a JPEG file before its first scan (ISO/IEC 10918-1, B.1 and B.2), as far as they
 * are needed: where the Exif data lies, how it is to be decoded, and whether it has an end.
 */
final class JpegFile {

  private static final int MARKER = 0xFF;
  private static final int APP1 = 0xE1;
  private static final int SCAN = 0xDA;
  private static final int END = 0xD9;
  private static final int PROGRESSIVE = 0xC2;
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

  /**
   * Whether it comes in several scans, so that a decoder has to hold all of them at full size: it
   * is progressive (SOF2), or its first scan has not all components of the frame (B.2.2, B.2.3).
   */
  boolean hasSeveralScans() {
    int frame = 2;
    while (isSegment(frame) && !isFrame(file[frame + 1] & 0xFF)) {
      frame += 2 + length(frame);
    }
    int scan = scan();
    boolean whole = frame + 9 < file.length && scan + 4 < file.length;
    return whole && ((file[frame + 1] & 0xFF) == PROGRESSIVE || file[scan + 4] != file[frame + 9]);
  }

  private static boolean isFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
  }

  /** Whether the marker for the end follows the first scan: a cut file has none. */
  boolean hasEnd() {
    for (int i = scan() + 2; i + 1 < file.length; i++) {
      if ((file[i] & 0xFF) == MARKER && (file[i + 1] & 0xFF) == END) {
        return true;
      }
    }
    return false;
  }

  /** Where the first scan begins, or where the segments stop. */
  private int scan() {
    int at = 2;
    while (isSegment(at) && (file[at + 1] & 0xFF) != SCAN) {
      at += 2 + length(at);
    }
    return at;
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
