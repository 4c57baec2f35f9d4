package dev.flangewright.bench.web;

import dev.flangewright.heat.Countdown;
import dev.flangewright.heat.CountdownWords;
import dev.flangewright.heat.PieceWindow;
import dev.flangewright.heat.Told;
import dev.flangewright.heat.WindowState;
import dev.flangewright.materials.HeatTreatment;
import dev.flangewright.materials.Sourced;
import dev.flangewright.people.LogTime;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The countdown as the page tells it.
 *
 * @param runs the clock runs towards closesAt
 * @param onFreezing what the table says of freezing it now; perhaps empty
 * @param until when the clock runs out, in words; empty unless it runs
 * @param bestUntil ISO 8601, until when severe forming is best done; empty unless the clock runs
 * @param closesAt ISO 8601; empty as above
 * @param now ISO 8601, when this was true
 * @param late who lets it be formed past its window, and why; empty if nobody does
 */
record CountdownView(
    WindowState state,
    boolean inFreezer,
    String sentence,
    String spent,
    String asOf,
    String onFreezing,
    String until,
    boolean runs,
    String bestUntil,
    String closesAt,
    String now,
    String late,
    List<String> stays,
    List<String> rows) {

  static CountdownView of(PieceWindow window, Instant now) {
    Countdown countdown = window.countdown();
    Instant end = runsOutAt(countdown);
    Double best = countdown.bestLeftMin();
    return new CountdownView(
        countdown.state(),
        countdown.inFreezer(),
        CountdownWords.onPage(countdown, window.figures(), now),
        CountdownWords.spent(countdown),
        "As of " + LogTime.of(now, now) + ".",
        CountdownWords.onFreezing(countdown, window.figures()),
        end == null ? "" : "closes " + LogTime.of(end, now),
        end != null,
        end != null && best != null ? "" + now.plusMillis(Math.round(best * 60_000)) : "",
        end == null ? "" : end.toString(),
        now.toString(),
        late(window.late(), now),
        window.stays().stream().map(stay -> CountdownWords.stay(stay, now)).toList(),
        window.figures().rows().stream().map(CountdownView::row).toList());
  }

  /** Null unless the clock runs. */
  private static @Nullable Instant runsOutAt(Countdown countdown) {
    boolean stands = countdown.paused() || countdown.state() == WindowState.PAST;
    return stands ? null : countdown.closesAt();
  }

  /** It can go into the freezer. */
  public boolean mayFreeze() {
    return !inFreezer && state != WindowState.PAST;
  }

  /** The lead can let it be formed all the same. */
  public boolean mayBeLet() {
    return state == WindowState.PAST && late.isEmpty();
  }

  private static String late(@Nullable Told late, Instant now) {
    return late == null
        ? ""
        : "%s lets it be formed past its window since %s: %s"
            .formatted(late.who(), LogTime.of(late.at(), now), late.note());
  }

  private static String row(HeatTreatment row) {
    String note = row.note();
    return "%s: %s%s%s. %s.%s"
        .formatted(
            row.alloys(),
            row.step(),
            row.appliesTo() == null ? "" : ", " + row.appliesTo(),
            figures(row),
            new Sourced(0, row.source(), row.knownBy()).said(),
            note == null ? "" : " " + note + ".");
  }

  private static String figures(HeatTreatment row) {
    Double low = row.low();
    Double high = row.high();
    if (low == null && high == null) {
      return "";
    }
    String range =
        low == null || high == null
            ? "at most " + number(high)
            : number(low) + " to " + number(high);
    return ": %s %s".formatted(range, row.unit());
  }

  private static String number(@Nullable Double value) {
    return value == null ? "?" : String.format(Locale.ROOT, "%.0f", value);
  }
}
