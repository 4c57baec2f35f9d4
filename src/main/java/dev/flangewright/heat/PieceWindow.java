package dev.flangewright.heat;

import dev.flangewright.materials.FormingWindow;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that is known of the last quench of a piece.
 *
 * @param figures what the shipped table says of the alloy; empty lists and nulls where it is silent
 * @param told by whom and when the quench was told
 * @param late who lets it be formed past its window, and why; null if nobody does
 */
public record PieceWindow(
    String alloy,
    Instant quenchedAt,
    Told told,
    List<Stay> stays,
    @Nullable Told late,
    FormingWindow figures,
    Countdown countdown) {

  /** Whether the lead's leave covers what is done at this instant. */
  public boolean mayBeFormedLate(Instant at) {
    return late != null && !late.at().isAfter(at);
  }
}
