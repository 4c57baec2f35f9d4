package dev.flangewright.photos;

/** A photo made ready to be stored: upright, in both sizes, with nothing but the picture in it. */
public final class TakenPhoto {

  private final byte[] full;
  private final byte[] small;
  private final int width;
  private final int height;
  private final String sha256;

  /**
   * @param width of the full size, in pixels
   * @param height of the full size, in pixels
   * @param sha256 of the file as it came in, in hexadecimal
   */
  TakenPhoto(byte[] full, byte[] small, int width, int height, String sha256) {
    this.full = full;
    this.small = small;
    this.width = width;
    this.height = height;
    this.sha256 = sha256;
  }

  /** The JPEG file of that size. */
  byte[] jpeg(PhotoSize size) {
    return size == PhotoSize.FULL ? full : small;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Of the file as it came in, in hexadecimal. */
  public String sha256() {
    return sha256;
  }
}
