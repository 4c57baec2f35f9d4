package dev.flangewright.heat;

import dev.flangewright.materials.FormingWindow;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is left of a forming window at an instant.
 *
 * @param inFreezer it lies in the freezer, whatever the state
 * @param runsInFreezer why the clock runs on although it lies there
 * @param spent minutes on the clock
 * @param bestLeftMin minutes at room temperature until severe forming is best finished, 0 when they
 *     are over; null where the table tells none
 * @param leftMin minutes at room temperature until it must be; as above
 * @param closesAt when the window closes or has closed if the piece stays where it is: on the bench
 *     by the clock, in the freezer by the longest storage; null where the table tells none
 * @param keptTooLong it is past because it lay frozen longer than the table allows
 */
public record Countdown(
    WindowState state,
    boolean inFreezer,
    ClockRuns runsInFreezer,
    Spent spent,
    @Nullable Double bestLeftMin,
    @Nullable Double leftMin,
    @Nullable Instant closesAt,
    boolean keptTooLong) {

  /**
   * Counts. Time before the freezer counts and goes on after it: thawing does not give it back.
   * Several stays in the freezer add up, and the warmest of them sets how long it keeps.
   *
   * @param stays one after the other; what happened after the instant is left out
   */
  public static Countdown at(
      Instant at, Instant quenchedAt, List<Stay> stays, FormingWindow figures) {
    Elapsed elapsed = new Elapsed(quenchedAt, figures);
    stays.stream().filter(stay -> !stay.in().isAfter(at)).forEach(stay -> elapsed.pass(stay, at));
    elapsed.passOutside(at);
    return elapsed.countdown(at);
  }

  /** The clock stands still. */
  public boolean paused() {
    return inFreezer && runsInFreezer == ClockRuns.NOT;
  }
}
