package dev.flangewright.bench.web;

import dev.flangewright.heat.Countdown;
import dev.flangewright.heat.CountdownWords;
import dev.flangewright.heat.PieceWindow;
import dev.flangewright.heat.Stay;
import dev.flangewright.heat.Told;
import dev.flangewright.heat.WindowState;
import dev.flangewright.materials.HeatTreatment;
import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How long a piece stays soft after its last quench. */
@Schema(name = "FormingWindow")
record WindowAnswer(
    String alloy,
    Instant quenchedAt,
    WindowState state,
    @Schema(description = "Lies in the freezer; the state may be past all the same.")
        boolean inFreezer,
    @Schema(description = "The clock stands still.") boolean paused,
    @Schema(description = "Minutes on the clock since the quench.") double spentMin,
    @Schema(description = "Minutes until severe forming is best finished; null: no figure.")
        @Nullable Double bestLeftMin,
    @Schema(description = "Minutes until severe forming must be finished; null: no figure.")
        @Nullable Double leftMin,
    @Schema(description = "When it closes, or has closed, if the piece stays where it is.")
        @Nullable Instant closesAt,
    String inWords,
    List<Stay> freezer,
    @Schema(description = "The lead's leave to form it past its window; null without one.")
        @Nullable Told letLate,
    @Schema(description = "The rows of the shipped table that the figures rest on.")
        List<HeatTreatment> rows) {

  static WindowAnswer of(PieceWindow window, Instant now) {
    Countdown countdown = window.countdown();
    return new WindowAnswer(
        window.alloy(),
        window.quenchedAt(),
        countdown.state(),
        countdown.inFreezer(),
        countdown.paused(),
        countdown.spent().total(),
        countdown.bestLeftMin(),
        countdown.leftMin(),
        countdown.closesAt(),
        CountdownWords.onPage(countdown, window.figures(), now),
        window.stays(),
        window.late(),
        window.figures().rows());
  }
}
