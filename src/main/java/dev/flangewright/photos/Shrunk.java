package dev.flangewright.photos;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** Makes a picture smaller, never larger, in plain sRGB on white. */
final class Shrunk {

  private Shrunk() {}

  /**
   * By halves, so that every pixel counts in a bilinear step.
   *
   * @param longSidePx what the longer side has at most
   */
  static BufferedImage to(int longSidePx, BufferedImage picture) {
    BufferedImage smaller = picture;
    while (longSide(smaller) > 2 * longSidePx) {
      smaller = drawn(smaller, 0.5);
    }
    return drawn(smaller, Math.min(1, (double) longSidePx / longSide(smaller)));
  }

  private static int longSide(BufferedImage picture) {
    return Math.max(picture.getWidth(), picture.getHeight());
  }

  private static BufferedImage drawn(BufferedImage picture, double scale) {
    int width = (int) Math.max(1, Math.round(picture.getWidth() * scale));
    int height = (int) Math.max(1, Math.round(picture.getHeight() * scale));
    BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = drawn.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(picture, 0, 0, width, height, Color.WHITE, null);
    pen.dispose();
    return drawn;
  }
}
