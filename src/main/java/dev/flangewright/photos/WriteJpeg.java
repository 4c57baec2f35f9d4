package dev.flangewright.photos;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes a picture as a JPEG file with no metadata but what every JPEG has. */
final class WriteJpeg {

  /** What a stored picture has at most; both database engines hold 1 MiB in a value. */
  static final int MOST_BYTES = 1_000_000;

  /** Photos fit at the first; the others are for noise that no camera makes. */
  private static final float[] QUALITIES = {0.85f, 0.7f, 0.5f, 0.3f, 0.1f};

  private WriteJpeg() {}

  static byte[] of(BufferedImage picture) {
    byte[] written = {};
    for (float quality : QUALITIES) {
      written = of(picture, quality);
      if (written.length <= MOST_BYTES) {
        return written;
      }
    }
    return written;
  }

  private static byte[] of(BufferedImage picture, float quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var output = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(output);
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.write(null, new IIOImage(picture, null, null), param);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // it goes to memory
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
