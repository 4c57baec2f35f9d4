package dev.flangewright.bench;

import org.jspecify.annotations.Nullable;

/**
 * What is told when a stage is finished.
 *
 * @param hours hours spent, 0 to 1000; null if not known
 * @param batch mark of the batch that the piece was cut from; empty if it is not said
 * @param blockDamage what was damaged on the block that it was done on; empty if nothing was
 * @param note anything else; may be empty
 */
public record WorkDone(@Nullable Double hours, String batch, String blockDamage, String note) {

  /** Work at a stage that cuts nothing from a sheet and harmed no block. */
  public static WorkDone in(@Nullable Double hours, String note) {
    return new WorkDone(hours, "", "", note);
  }
}
