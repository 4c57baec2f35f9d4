package dev.flangewright.bench;

import org.jspecify.annotations.Nullable;

/**
 * What is told when a stage is finished.
 *
 * @param hours hours spent, 0 to 1000; null if not known
 * @param batch mark of the batch that the piece was cut from; empty if it is not said
 * @param blockDamage what was damaged on the block that it was done on; empty if nothing was
 * @param quenching what was said of the quench, for a heat treatment
 * @param note anything else; may be empty
 */
public record WorkDone(
    @Nullable Double hours, String batch, String blockDamage, Quenching quenching, String note) {

  /** Work of which nothing is told but this. */
  public static WorkDone in(@Nullable Double hours, String note) {
    return new WorkDone(hours, "", "", Quenching.NOT_SAID, note);
  }

  /** The same with the batch that the piece was cut from; empty if it is not said. */
  public WorkDone cutFrom(String mark) {
    return new WorkDone(hours, mark, blockDamage, quenching, note);
  }

  /** The same with word of damage to the block; empty if there was none. */
  public WorkDone damaged(String what) {
    return new WorkDone(hours, batch, what, quenching, note);
  }

  /** The same with what was said of the quench. */
  public WorkDone quenched(Quenching said) {
    return new WorkDone(hours, batch, blockDamage, said, note);
  }
}
