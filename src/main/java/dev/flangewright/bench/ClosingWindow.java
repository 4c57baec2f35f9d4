package dev.flangewright.bench;

import dev.flangewright.heat.OpenWindow;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The forming window of a quenched piece, as the ranking reads it.
 *
 * @param closesAt when it is too hard for severe forming; null while that is not near: in the
 *     freezer, without a figure in the table, or let past by the lead
 * @param bar why nothing can be formed on it now, as a sentence; null if it can
 * @param clearedBy who can clear that
 * @param inWords how it stands: {@code "forming window closes in 12 min"}
 */
record ClosingWindow(
    @Nullable Instant closesAt, @Nullable String bar, String clearedBy, String inWords) {

  static ClosingWindow of(OpenWindow window) {
    return switch (window.state()) {
      case IN_FREEZER ->
          barred(window, "It is in the freezer.", "whoever takes it out of the freezer");
      case PAST ->
          window.letLate()
              ? new ClosingWindow(null, null, "", window.inWords())
              : barred(window, "Its forming window is past.", WindowGate.WHO);
      default -> new ClosingWindow(window.closesAt(), null, "", window.inWords());
    };
  }

  private static ClosingWindow barred(OpenWindow window, String bar, String clearedBy) {
    return new ClosingWindow(null, bar, clearedBy, window.inWords());
  }

  Optional<StageBar> stageBar() {
    return Optional.ofNullable(bar).map(missing -> new StageBar(missing, clearedBy));
  }
}
