package dev.flangewright.drawing;

import java.util.Locale;

/** Numbers as they stand in a drawing: as coordinates, and as figures that people read. */
public final class Numbers {

  private static final double LARGEST = 1e9;

  private Numbers() {}

  /**
   * A coordinate with two decimals at most.
   *
   * @throws IllegalArgumentException if it is not a finite number below 10⁹
   */
  public static String drawn(double coordinate) {
    if (!(Math.abs(coordinate) < LARGEST)) {
      throw new IllegalArgumentException("Not a coordinate: " + coordinate);
    }
    long hundredths = Math.round(coordinate * 100);
    long rest = Math.abs(hundredths % 100);
    String whole = (hundredths < 0 ? "-" : "") + Math.abs(hundredths / 100);
    return rest == 0
        ? whole
        : whole + (rest % 10 == 0 ? "." + rest / 10 : (rest < 10 ? ".0" : ".") + rest);
  }

  /** A figure with the given decimals, a true minus sign and thin spaces between thousands. */
  public static String figure(double value, int decimals) {
    String plain = String.format(Locale.ROOT, "%,." + decimals + "f", value).replace(',', '\u202F');
    boolean isZero = plain.matches("-[0.]+");
    return isZero ? plain.substring(1) : plain.replace('-', '−');
  }

  /** A strain as a percentage with its sign and two decimals, one from 10 % on. */
  public static String percent(double strain) {
    double percent = strain * 100;
    return figure(percent, Math.abs(percent) < 9.995 ? 2 : 1) + " %";
  }
}
