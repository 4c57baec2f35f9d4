package dev.flangewright.photos;

import java.nio.ByteBuffer;

/** The chunks of a PNG file before its picture (PNG, third edition, 5.3 and 11.3.6). */
final class PngFile {

  private static final int SIGNATURE_BYTES = 8;
  private static final int AROUND_A_CHUNK = 12;
  private static final int ANIMATION = 0x6163544C; // acTL
  private static final int PICTURE = 0x49444154; // IDAT

  private PngFile() {}

  /** Whether it has several frames. */
  static boolean moves(byte[] file) {
    ByteBuffer data = ByteBuffer.wrap(file);
    long at = SIGNATURE_BYTES;
    while (at + AROUND_A_CHUNK <= file.length) {
      int type = data.getInt((int) at + 4);
      if (type == ANIMATION || type == PICTURE) {
        return type == ANIMATION;
      }
      at += AROUND_A_CHUNK + (data.getInt((int) at) & 0xFFFF_FFFFL);
    }
    return false;
  }
}
