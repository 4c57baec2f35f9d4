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
    double scale = Math.min(1, (double) longSidePx / longSide(picture));
    BufferedImage smaller = picture;
    while (longSide(smaller) > 2 * longSidePx) {
      smaller = drawn(smaller, scaled(smaller.getWidth(), 0.5), scaled(smaller.getHeight(), 0.5));
    }
    return drawn(smaller, scaled(picture.getWidth(), scale), scaled(picture.getHeight(), scale));
  }

  /** A side of so many pixels, made so much smaller: one pixel at least. */
  static int scaled(int px, double scale) {
    return (int) Math.max(1, Math.round(px * scale));
  }

  private static int longSide(BufferedImage picture) {
    return Math.max(picture.getWidth(), picture.getHeight());
  }

  private static BufferedImage drawn(BufferedImage picture, int width, int height) {
    BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = drawn.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(picture, 0, 0, width, height, Color.WHITE, null);
    pen.dispose();
    return drawn;
  }
}
