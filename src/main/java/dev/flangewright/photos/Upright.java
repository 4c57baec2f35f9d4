package dev.flangewright.photos;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** Turns a picture as its camera was held. */
final class Upright {

  private Upright() {}

  /**
   * @param orientation 1 to 8, as {@link ExifOrientation} tells: the edges of the scene at which
   *     row 0 and column 0 lie
   */
  static BufferedImage of(BufferedImage picture, int orientation) {
    if (orientation == ExifOrientation.UPRIGHT) {
      return picture;
    }
    boolean lies = orientation >= 5;
    int width = lies ? picture.getHeight() : picture.getWidth();
    int height = lies ? picture.getWidth() : picture.getHeight();
    BufferedImage turned = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = turned.createGraphics();
    pen.drawImage(picture, turn(orientation, picture.getWidth(), picture.getHeight()), null);
    pen.dispose();
    return turned;
  }

  private static AffineTransform turn(int orientation, int w, int h) {
    return switch (orientation) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
      default -> new AffineTransform();
    };
  }
}
