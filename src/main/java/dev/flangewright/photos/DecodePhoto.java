package dev.flangewright.photos;

import dev.flangewright.people.Refused;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Decodes the picture of a file, and of its other content nothing. The size that the header claims
 * is looked at first; then no more pixels are kept than are needed, so that a picture of 80
 * megapixels takes no more memory than one of 17.
 */
final class DecodePhoto {

  private DecodePhoto() {}

  /**
   * @param neededPx the longer side keeps at least so many pixels, if it has them, and fewer than
   *     twice as many
   * @throws Refused if it is no whole JPEG or PNG picture, or too large
   */
  static BufferedImage of(byte[] file, int neededPx) {
    PhotoFormat format = PhotoFormat.of(file);
    refuseUnlessWhole(format, file);
    ImageReader reader = format.reader();
    try (var input = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
      reader.setInput(input, true, true);
      PhotoLimits.refuseUnlessFits(reader.getWidth(0), reader.getHeight(0));
      if (format == PhotoFormat.JPEG && new JpegFile(file).hasSeveralScans()) {
        PhotoLimits.refuseUnlessFitsInScans(reader.getWidth(0), reader.getHeight(0));
      }
      ImageReadParam param = reader.getDefaultReadParam();
      int every = Math.max(1, Math.max(reader.getWidth(0), reader.getHeight(0)) / neededPx);
      param.setSourceSubsampling(every, every, 0, 0);
      return inColoursForScreens(reader.read(0, param));
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException damaged) {
      throw unreadable();
    } finally {
      reader.dispose();
    }
  }

  /** Readers guess at the inks of a print; a record should not hold guessed colours. */
  private static BufferedImage inColoursForScreens(BufferedImage picture) {
    if (picture.getColorModel().getColorSpace().getType() == ColorSpace.TYPE_CMYK) {
      throw unreadable();
    }
    return picture;
  }

  private static void refuseUnlessWhole(PhotoFormat format, byte[] file) {
    if (format == PhotoFormat.JPEG && !new JpegFile(file).hasEnd()) {
      throw unreadable();
    }
    if (format == PhotoFormat.PNG && PngFile.moves(file)) {
      throw Refused.unacceptable("The picture moves; a photo has one frame.");
    }
  }

  private static Refused unreadable() {
    return Refused.unacceptable(
        "The photo cannot be read: the file is cut short or damaged, or in colours for print"
            + " (CMYK). Nothing was stored; take it again.");
  }
}
