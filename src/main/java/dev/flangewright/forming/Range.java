package dev.flangewright.forming;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** The values an input may take; a missing bound is open, an included bound may be reached. */
record Range(@Nullable Double min, boolean minIncluded, @Nullable Double max, boolean maxIncluded) {

  static Range fromTo(double min, double max) {
    return new Range(min, true, max, true);
  }

  static Range aboveUpTo(double min, double max) {
    return new Range(min, false, max, true);
  }

  static Range between(double min, double max) {
    return new Range(min, false, max, false);
  }

  static Range atLeast(double min) {
    return new Range(min, true, null, false);
  }

  static Range above(double min) {
    return new Range(min, false, null, false);
  }

  static Range below(double max) {
    return new Range(null, false, max, false);
  }

  boolean contains(double value) {
    boolean aboveMin = min == null || value > min || minIncluded && value == min;
    boolean belowMax = max == null || value < max || maxIncluded && value == max;
    return aboveMin && belowMax;
  }

  /** As it follows "must be" in a sentence. */
  String text() {
    if (min != null && max != null && minIncluded && maxIncluded) {
      return "from " + plain(min) + " to " + plain(max);
    }
    String lower = min == null ? "" : (minIncluded ? "at least " : "above ") + plain(min);
    String upper = max == null ? "" : (maxIncluded ? "at most " : "below ") + plain(max);
    return lower.isEmpty() || upper.isEmpty() ? lower + upper : lower + " and " + upper;
  }

  /** A number as a person writes it: six significant figures, no exponent, no trailing zeros. */
  static String plain(double value) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "not a number" : "infinite";
    }
    var rounded = new BigDecimal(value).round(new MathContext(6, RoundingMode.HALF_UP));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
