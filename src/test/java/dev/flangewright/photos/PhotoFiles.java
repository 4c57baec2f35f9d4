package dev.flangewright.photos;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Invented photos as files, good ones and bad ones. */
public final class PhotoFiles {

  /**
   * Degrees, minutes and seconds of an invented place; its bytes are looked for in what is kept.
   */
  private static final int[] PLACE = {51, 1, 30, 1, 1234567, 1000};

  private PhotoFiles() {}

  /** Four fields: red, green above blue, white. */
  static BufferedImage fields(int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    Color[] colours = {Color.RED, Color.GREEN, Color.BLUE, Color.WHITE};
    for (int i = 0; i < colours.length; i++) {
      pen.setColor(colours[i]);
      pen.fillRect(i % 2 * (width / 2), i / 2 * (height / 2), width - width / 2, height);
    }
    pen.dispose();
    return picture;
  }

  /** A JPEG of four fields; another size is another photo. */
  public static byte[] jpeg(int width, int height) {
    return file(fields(width, height), "jpeg");
  }

  static byte[] png(int width, int height) {
    return file(fields(width, height), "png");
  }

  static byte[] file(RenderedImage picture, String format) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      if (!ImageIO.write(picture, format, bytes)) {
        throw new IllegalArgumentException("no writer for " + format);
      }
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The same JPEG with what a phone writes: Exif 2.3 (CIPA DC-008-2012; segment in 4.7.2, tags
   * Orientation 0x0112 and GPS pointer 0x8825 in 4.6) in the byte order of TIFF 6.0's "MM", an XMP
   * packet (ISO 16684-3) and a comment.
   */
  static byte[] asFromAPhone(byte[] jpeg, int orientation) {
    byte[] xmp =
        "http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>ann@bench</x:xmpmeta>"
            .getBytes(StandardCharsets.ISO_8859_1);
    byte[] comment = "made by ann".getBytes(StandardCharsets.ISO_8859_1);
    return with(jpeg, segment(0xE1, exif(orientation)), segment(0xE1, xmp), segment(0xFE, comment));
  }

  /** The same JPEG with the marker that makes four channels CMYK (ISO/IEC 10918-6, 6.5.3). */
  static byte[] forPrint(byte[] fourChannels) {
    byte[] adobe = {'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, 0};
    return with(fourChannels, segment(0xEE, adobe));
  }

  private static byte[] with(byte[] jpeg, byte[]... segments) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(jpeg, 0, 2);
    for (byte[] segment : segments) {
      file.writeBytes(segment);
    }
    file.write(jpeg, 2, jpeg.length - 2);
    return file.toByteArray();
  }

  private static byte[] segment(int marker, byte[] content) {
    return ByteBuffer.allocate(content.length + 4)
        .put((byte) 0xFF)
        .put((byte) marker)
        .putShort((short) (content.length + 2))
        .put(content)
        .array();
  }

  private static byte[] exif(int orientation) {
    int gps = 8 + 2 + 2 * 12 + 4;
    int place = gps + 2 + 2 * 12 + 4;
    ByteBuffer exif = ByteBuffer.allocate(6 + place + 4 * PLACE.length);
    exif.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1));
    exif.putShort((short) 0x4D4D).putShort((short) 42).putInt(8);
    exif.putShort((short) 2);
    entry(exif, 0x0112, 3, 1).putShort((short) orientation).putShort((short) 0);
    entry(exif, 0x8825, 4, 1).putInt(gps);
    exif.putInt(0);
    exif.putShort((short) 2);
    entry(exif, 0x0001, 2, 2).put((byte) 'N').put(new byte[3]);
    entry(exif, 0x0002, 5, 3).putInt(place);
    exif.putInt(0);
    for (int value : PLACE) {
      exif.putInt(value);
    }
    return exif.array();
  }

  private static ByteBuffer entry(ByteBuffer exif, int tag, int type, int count) {
    return exif.putShort((short) tag).putShort((short) type).putInt(count);
  }

  /** The bytes of the place, as they stand in the Exif data. */
  static byte[] place() {
    ByteBuffer bytes = ByteBuffer.allocate(4 * PLACE.length);
    for (int value : PLACE) {
      bytes.putInt(value);
    }
    return bytes.array();
  }

  /** A PNG (third edition, 11.2.1) of a few bytes whose header claims this size. */
  static byte[] pngThatClaims(int width, int height) {
    byte[] header =
        ByteBuffer.allocate(13)
            .putInt(width)
            .putInt(height)
            .put(new byte[] {8, 2, 0, 0, 0})
            .array();
    return ByteBuffer.allocate(8 + 25 + 12)
        .put(png(1, 1), 0, 8)
        .put(chunk("IHDR", header))
        .put(chunk("IEND", new byte[0]))
        .array();
  }

  /** A PNG with a chunk that says it moves (11.3.6.1), after the header. */
  static byte[] pngThatMoves() {
    byte[] still = png(20, 20);
    byte[] moves = chunk("acTL", ByteBuffer.allocate(8).putInt(2).putInt(0).array());
    return ByteBuffer.allocate(still.length + moves.length)
        .put(still, 0, 33)
        .put(moves)
        .put(still, 33, still.length - 33)
        .array();
  }

  private static byte[] chunk(String type, byte[] content) {
    byte[] name = type.getBytes(StandardCharsets.ISO_8859_1);
    CRC32 sum = new CRC32();
    sum.update(name);
    sum.update(content);
    return ByteBuffer.allocate(12 + content.length)
        .putInt(content.length)
        .put(name)
        .put(content)
        .putInt((int) sum.getValue())
        .array();
  }
}
