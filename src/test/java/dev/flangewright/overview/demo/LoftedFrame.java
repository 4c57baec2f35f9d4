package dev.flangewright.overview.demo;

import dev.flangewright.forming.Point;

/**
 * One frame of the loft: an upper and a lower half superellipse that meet at the greatest breadth.
 *
 * <pre>
 * x = a·sin(u)|sin(u)|^(2/n − 1)      y = rise + b·cos(u)|cos(u)|^(2/n − 1)
 * u angle from the crown, degrees, positive to starboard, 180 at the keel; a half breadth (mm);
 * b crown height or keel depth (mm) above or below the greatest breadth; n 2.3 above, 2.6 below
 * </pre>
 *
 * <p>Strict arithmetic, so that every machine writes the same file.
 *
 * @param positionMm where the frame stands, from the datum at the bow
 * @param riseMm height of the greatest breadth over the datum waterline
 * @param keelDropMm how far the keel stands proud of the lower half: a reverse curve on either side
 */
record LoftedFrame(
    int number,
    double positionMm,
    double halfBreadthMm,
    double crownMm,
    double keelMm,
    double riseMm,
    double keelDropMm) {

  private static final double UPPER_EXPONENT = 2.3;
  private static final double LOWER_EXPONENT = 2.6;
  private static final double KEEL_HALF_WIDTH_MM = 90;

  /** The mould line at angle u. */
  Point skin(double u) {
    Point bare = bare(u);
    double across = bare.xMm() / KEEL_HALF_WIDTH_MM;
    double drop = isLower(u) ? keelDropMm * StrictMath.exp(-across * across) : 0;
    return new Point(bare.xMm(), bare.yMm() - drop);
  }

  /** The point {@code depthMm} inside the mould line, square to it; the keel's drop left out. */
  Point inside(double u, double depthMm) {
    Point normal = outward(u);
    Point bare = bare(u);
    return new Point(bare.xMm() - depthMm * normal.xMm(), bare.yMm() - depthMm * normal.yMm());
  }

  /** How fast the skin moves outward along the hull at u, mm per mm, between two frames. */
  static double taper(LoftedFrame fore, LoftedFrame aft, LoftedFrame here, double u) {
    Point normal = here.outward(u);
    Point from = fore.bare(u);
    Point to = aft.bare(u);
    double out = (to.xMm() - from.xMm()) * normal.xMm() + (to.yMm() - from.yMm()) * normal.yMm();
    return out / (aft.positionMm - fore.positionMm);
  }

  private Point bare(double u) {
    double power = 2 / exponent(u);
    double sin = StrictMath.sin(StrictMath.toRadians(wrapped(u)));
    double cos = StrictMath.cos(StrictMath.toRadians(wrapped(u)));
    return new Point(
        halfBreadthMm * signedPower(sin, power), riseMm + height(u) * signedPower(cos, power));
  }

  /** Unit normal, from the gradient of |x/a|^n + |y/b|^n. */
  private Point outward(double u) {
    Point bare = bare(u);
    double n = exponent(u);
    double gx = signedPower(bare.xMm() / halfBreadthMm, n - 1) / halfBreadthMm;
    double gy = signedPower((bare.yMm() - riseMm) / height(u), n - 1) / height(u);
    double length = StrictMath.hypot(gx, gy);
    return new Point(gx / length, gy / length);
  }

  private double height(double u) {
    return isLower(u) ? keelMm : crownMm;
  }

  private static double exponent(double u) {
    return isLower(u) ? LOWER_EXPONENT : UPPER_EXPONENT;
  }

  private static boolean isLower(double u) {
    return Math.abs(wrapped(u)) > 90;
  }

  private static double wrapped(double u) {
    return u < -180 ? u + 360 : u;
  }

  private static double signedPower(double value, double power) {
    return Math.signum(value) * StrictMath.pow(Math.abs(value), power);
  }
}
