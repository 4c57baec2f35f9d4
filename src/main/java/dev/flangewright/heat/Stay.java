package dev.flangewright.heat;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A time in the freezer.
 *
 * @param out null while it is there
 * @param celsius of the freezer, as it was read
 */
public record Stay(Instant in, @Nullable Instant out, double celsius) {

  private static final double FAHRENHEIT_PER_CELSIUS = 1.8;
  private static final double FREEZING_FAHRENHEIT = 32;

  /** The same in degrees Fahrenheit, which the tables are written in. */
  public double fahrenheit() {
    return celsius * FAHRENHEIT_PER_CELSIUS + FREEZING_FAHRENHEIT;
  }

  /** Whether it lies in the freezer at this instant. */
  boolean holds(Instant at) {
    return !at.isBefore(in) && (out == null || at.isBefore(out));
  }
}
