package dev.flangewright.parts.exchange;

import org.jspecify.annotations.Nullable;

/**
 * An import as it stood at one instant. A page is drawn from this and not from the job itself,
 * which may come a step further while the page is drawn.
 *
 * @param doing the step at work, in words
 * @param percent how much of the step is done
 * @param plan what it would do, or has done; null until it is checked
 * @param refusal why nothing was stored; null unless it was refused
 */
public record ImportNow(
    String id,
    ImportJob.State state,
    String doing,
    int percent,
    @Nullable ImportPlan plan,
    @Nullable String refusal) {

  /** True while a thread works on it. */
  public boolean isRunning() {
    return state == ImportJob.State.CHECKING || state == ImportJob.State.STORING;
  }
}
