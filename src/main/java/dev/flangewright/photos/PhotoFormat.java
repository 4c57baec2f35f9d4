package dev.flangewright.photos;

import dev.flangewright.people.Refused;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;

/**
 * The kinds of file that are taken in, told by their first bytes, never by a name. Signatures:
 * ISO/IEC 10918-1 (JPEG: SOI, then a marker) and PNG, third edition, 5.2.
 */
enum PhotoFormat {
  JPEG("jpeg", 0xFF, 0xD8, 0xFF),
  PNG("png", 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A);

  private final String name;
  private final int[] signature;

  PhotoFormat(String name, int... signature) {
    this.name = name;
    this.signature = signature;
  }

  /**
   * @throws Refused if the file is of another kind
   */
  static PhotoFormat of(byte[] file) {
    return Arrays.stream(values())
        .filter(format -> format.begins(file))
        .findFirst()
        .orElseThrow(
            () ->
                Refused.unacceptable(
                    "The file is no JPEG and no PNG, whatever its name says. Take the photo from"
                        + " this page, and the phone hands a JPEG over; HEIC and WebP files are not"
                        + " taken."));
  }

  private boolean begins(byte[] file) {
    if (file.length < signature.length) {
      return false;
    }
    for (int i = 0; i < signature.length; i++) {
      if ((file[i] & 0xFF) != signature[i]) {
        return false;
      }
    }
    return true;
  }

  /** A new reader of the Java platform's own. */
  ImageReader reader() {
    return ImageIO.getImageReadersByFormatName(name).next();
  }
}
