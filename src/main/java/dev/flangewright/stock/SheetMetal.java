package dev.flangewright.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What a sheet is of.
 *
 * @param thicknessMm as figured from what is written, in mm or by gauge
 */
public record SheetMetal(String alloy, String temper, double thicknessMm) {

  /** Written by gauge, in inches and in mm, one thickness is not told to the last digit. */
  private static final double SAME_MM = 0.0101;

  /** The same alloy and thickness, in any temper. */
  boolean isAlike(SheetMetal other) {
    return alloy.equalsIgnoreCase(other.alloy)
        && Math.abs(thicknessMm - other.thicknessMm) < SAME_MM;
  }

  /** The same alloy, temper and thickness. */
  boolean isSame(SheetMetal other) {
    return isAlike(other) && temper.equalsIgnoreCase(other.temper);
  }

  /** {@code "2024 T3, 0.81 mm"}. */
  public String inWords() {
    String mm =
        BigDecimal.valueOf(thicknessMm)
            .setScale(2, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    return "%s %s, %s mm".formatted(alloy, temper, mm);
  }
}
