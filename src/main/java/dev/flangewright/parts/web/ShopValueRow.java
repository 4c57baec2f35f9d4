package dev.flangewright.parts.web;

import dev.flangewright.forming.ShopValue;
import dev.flangewright.materials.ShopValues;
import dev.flangewright.materials.Sourced;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;

/**
 * A shop value with where it comes from.
 *
 * @param own whether it is the build's own
 */
record ShopValueRow(
    ShopValue which, String value, boolean own, String source, String byDefault, String standing) {

  private static final MathContext SIX_FIGURES = new MathContext(6);

  static List<ShopValueRow> of(ShopValues values) {
    return Arrays.stream(ShopValue.values()).map(which -> of(which, values)).toList();
  }

  private static ShopValueRow of(ShopValue which, ShopValues values) {
    Sourced used = values.of(which);
    return new ShopValueRow(
        which,
        figure(used.value()),
        values.isOwn(which),
        used.source(),
        figure(which.byDefault()),
        which.standing());
  }

  private static String figure(double value) {
    return new BigDecimal(value).round(SIX_FIGURES).stripTrailingZeros().toPlainString();
  }
}
