package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The range that a measured number may lie in, ends included. */
final class Tolerance {

  private Tolerance() {}

  static void refuseUnlessSound(
      @Nullable Double nominal, @Nullable Double least, @Nullable Double most) {
    if (least == null && most == null) {
      throw Refused.unacceptable("tolerance is missing: say from where, to where, or both.");
    }
    if (Stream.of(nominal, least, most).anyMatch(n -> n != null && !Double.isFinite(n))) {
      throw Refused.unacceptable("tolerance needs numbers.");
    }
    if (least != null && most != null && least > most) {
      throw Refused.unacceptable("tolerance runs from the smaller number to the larger one.");
    }
    if (nominal != null && !holds(nominal, least, most)) {
      throw Refused.unacceptable("nominal lies outside its own tolerance.");
    }
  }

  static boolean holds(double number, @Nullable Double least, @Nullable Double most) {
    return (least == null || number >= least) && (most == null || number <= most);
  }

  static String inWords(CheckCard card) {
    Double nominal = card.nominal();
    String range = range(card.least(), card.most()) + unit(card);
    return nominal == null ? range : number(nominal) + unit(card) + ", " + range;
  }

  private static String range(@Nullable Double least, @Nullable Double most) {
    if (least == null) {
      return "at most " + number(most == null ? 0 : most);
    }
    return most == null ? "at least " + number(least) : number(least) + " to " + number(most);
  }

  private static String unit(CheckCard card) {
    return card.unit().isEmpty() ? "" : " " + card.unit();
  }

  /** As typed, without a needless exponent or zero, with a true minus sign. */
  static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString().replace('-', '−');
  }
}
