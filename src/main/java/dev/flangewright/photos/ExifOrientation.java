package dev.flangewright.photos;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How the camera was held: the tag Orientation of Exif 2.3 (CIPA DC-008, 4.6.4 A), in the first
 * directory of the TIFF structure (TIFF 6.0, section 2). Nothing else of the data is read.
 */
final class ExifOrientation {

  /** As it lies. */
  static final int UPRIGHT = 1;

  private static final int TAG = 0x0112;
  private static final int SHORT = 3;
  private static final int ENTRY_BYTES = 12;

  private ExifOrientation() {}

  /** 1 to 8; 1 also where the file does not say, or says it wrongly. */
  static int of(byte[] jpeg) {
    try {
      return new JpegFile(jpeg).exif().map(ExifOrientation::inTiff).orElse(UPRIGHT);
    } catch (IndexOutOfBoundsException damaged) {
      return UPRIGHT;
    }
  }

  private static int inTiff(byte[] tiff) {
    ByteBuffer data = ByteBuffer.wrap(tiff);
    data.order(data.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = data.getInt(4);
    int entries = data.getShort(directory) & 0xFFFF;
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + i * ENTRY_BYTES;
      if ((data.getShort(entry) & 0xFFFF) == TAG && data.getShort(entry + 2) == SHORT) {
        int value = data.getShort(entry + 8);
        return value >= 1 && value <= 8 ? value : UPRIGHT;
      }
    }
    return UPRIGHT;
  }
}
