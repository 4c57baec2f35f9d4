package dev.flangewright.photos;

import dev.flangewright.people.Refused;

/** What is too large to be looked at, told before anything is decoded. */
final class PhotoLimits {

  static final int MOST_BYTES = 15 * 1024 * 1024;
  static final int LONGEST_SIDE_PX = 16_000;
  static final long MOST_PIXELS = 80_000_000;

  /** Of a picture in several scans, which takes its full size in memory outside the heap. */
  static final long MOST_PIXELS_IN_SCANS = 24_000_000;

  private PhotoLimits() {}

  /**
   * @throws Refused if the file is empty or too large
   */
  static void refuseUnlessFits(long bytes) {
    if (bytes == 0) {
      throw Refused.unacceptable("photo is missing: take one or choose a file.");
    }
    if (bytes > MOST_BYTES) {
      throw Refused.unacceptable(
          "The photo is larger than 15 MB. Take it with fewer megapixels; nothing was stored.");
    }
  }

  /**
   * @throws Refused if the picture claims more pixels than a camera of a phone makes
   */
  static void refuseUnlessFits(int width, int height) {
    if (width > LONGEST_SIDE_PX
        || height > LONGEST_SIDE_PX
        || (long) width * height > MOST_PIXELS) {
      throw Refused.unacceptable(
          "The picture has %d x %d pixels; at most 80 megapixels and 16,000 a side are taken."
              .formatted(width, height));
    }
  }

  /**
   * @throws Refused if a picture in several scans is too large for that
   */
  static void refuseUnlessFitsInScans(int width, int height) {
    if ((long) width * height > MOST_PIXELS_IN_SCANS) {
      throw Refused.unacceptable(
          "The picture is a progressive JPEG of %d x %d pixels; of these at most 24 megapixels are"
                  .formatted(width, height)
              + " taken. A camera's own JPEG may have 80.");
    }
  }
}
