package dev.flangewright.parts.web;

import dev.flangewright.drawing.Numbers;
import java.util.Collection;
import java.util.Collections;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A figure as a page shows it: digits and unit, or words where there is no figure. */
record Figure(String text, String unit) {

  private static final Figure UNKNOWN = words("not known");

  static Figure words(String text) {
    return new Figure(text, "");
  }

  static Figure of(@Nullable Double value, int decimals, String unit) {
    if (value == null) {
      return UNKNOWN;
    }
    return value.isInfinite()
        ? words("straight")
        : new Figure(Numbers.figure(value, decimals), unit);
  }

  static Figure mm(@Nullable Double value, int decimals) {
    return of(value, decimals, "mm");
  }

  /** A fraction as a percentage. */
  static Figure percent(@Nullable Double fraction, int decimals) {
    return of(fraction == null ? null : fraction * 100, decimals, "%");
  }

  /** From the least to the largest; one figure where they read alike. */
  static Figure range(Collection<? extends @Nullable Double> values, int decimals, String unit) {
    if (values.isEmpty() || values.stream().anyMatch(Objects::isNull)) {
      return UNKNOWN;
    }
    String least = Numbers.figure(Collections.min(known(values)), decimals);
    String most = Numbers.figure(Collections.max(known(values)), decimals);
    return new Figure(least.equals(most) ? least : least + " to " + most, unit);
  }

  private static Collection<Double> known(Collection<? extends @Nullable Double> values) {
    return values.stream().map(value -> Objects.requireNonNull(value)).toList();
  }

  /** As it stands in a sentence; a line does not break before the unit. */
  @Override
  public String toString() {
    return unit.isEmpty() ? text : text + "\u00A0" + unit;
  }
}
