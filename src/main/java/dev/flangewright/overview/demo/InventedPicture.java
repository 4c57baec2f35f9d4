package dev.flangewright.overview.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/**
 * A drawn stand-in for a photo: a flange seen from its edge, with a mark on it. The word INVENTED
 * is across it, in strokes, since a server may have no fonts.
 */
final class InventedPicture {

  private static final int WIDTH = 960;
  private static final int HEIGHT = 720;
  private static final int LETTER = 70;

  /** The letters' strokes on a grid of 2 by 4, each as x y x y. */
  private static final int[][][] INVENTED = {
    {{1, 0, 1, 4}},
    {{0, 4, 0, 0}, {0, 0, 2, 4}, {2, 4, 2, 0}},
    {{0, 0, 1, 4}, {1, 4, 2, 0}},
    {{2, 0, 0, 0}, {0, 0, 0, 4}, {0, 4, 2, 4}, {0, 2, 2, 2}},
    {{0, 4, 0, 0}, {0, 0, 2, 4}, {2, 4, 2, 0}},
    {{0, 0, 2, 0}, {1, 0, 1, 4}},
    {{2, 0, 0, 0}, {0, 0, 0, 4}, {0, 4, 2, 4}, {0, 2, 2, 2}},
    {{0, 0, 0, 4}, {0, 0, 2, 1}, {2, 1, 2, 3}, {2, 3, 0, 4}}
  };

  private InventedPicture() {}

  /**
   * A PNG file.
   *
   * @param metal the colour of what is shown
   * @param markAt how far along the edge the mark is, 0 to 1
   */
  static byte[] of(Color metal, double markAt) {
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(new Color(0xf1ecdd));
    pen.fillRect(0, 0, WIDTH, HEIGHT);
    pen.setColor(metal);
    pen.setStroke(new BasicStroke(60));
    pen.drawArc(60, 240, 840, 800, 20, 140);
    mark(pen, Math.toRadians(160 - 140 * markAt));
    write(pen);
    pen.dispose();
    return png(picture);
  }

  /** A jagged line across the edge. */
  private static void mark(Graphics2D pen, double angle) {
    pen.setColor(new Color(0xb34700));
    pen.setStroke(new BasicStroke(8));
    int x = (int) (480 + 420 * Math.cos(angle));
    int y = (int) (640 - 400 * Math.sin(angle));
    pen.drawPolyline(
        new int[] {x - 8, x + 12, x - 12, x + 8}, new int[] {y - 45, y - 12, y + 12, y + 45}, 4);
  }

  private static void write(Graphics2D pen) {
    pen.setColor(new Color(0x16242d));
    pen.setStroke(new BasicStroke(9));
    for (int i = 0; i < INVENTED.length; i++) {
      int left = 120 + i * (LETTER + 22);
      for (int[] line : INVENTED[i]) {
        pen.drawLine(
            left + line[0] * LETTER / 2,
            60 + line[1] * LETTER / 2,
            left + line[2] * LETTER / 2,
            60 + line[3] * LETTER / 2);
      }
    }
  }

  private static byte[] png(BufferedImage picture) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      boolean unused = ImageIO.write(picture, "png", bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e); // it goes to memory
    }
  }
}
