package dev.flangewright.bench;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What is said of the quench when a heat treatment is finished.
 *
 * @param at null if nothing is said: as it was finished
 * @param none it was annealed or aged, and not quenched
 */
public record Quenching(@Nullable Instant at, boolean none) {

  public static final Quenching NOT_SAID = new Quenching(null, false);

  boolean isSaid() {
    return at != null || none;
  }
}
