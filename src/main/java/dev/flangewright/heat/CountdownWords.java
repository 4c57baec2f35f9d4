package dev.flangewright.heat;

import dev.flangewright.materials.FormingWindow;
import dev.flangewright.materials.Sourced;
import dev.flangewright.people.LogTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A countdown as people say it. Minutes left are rounded down, minutes spent up. */
public final class CountdownWords {

  private CountdownWords() {}

  /** A few words for a list: {@code "forming window closes in 12 min"}. */
  public static String inList(Countdown countdown, Instant now) {
    return switch (countdown.state()) {
      case OPEN, CLOSING -> "forming window closes in " + minutesLeft(countdown.leftMin());
      case PAST -> "forming window past" + at(" since ", countdown.closesAt(), now);
      case IN_FREEZER ->
          "in the freezer"
              + at(countdown.paused() ? ", keeps until " : ", closes ", countdown.closesAt(), now);
      case NOT_KNOWN -> "quenched; the table has no forming window for its alloy";
    };
  }

  /** Sentences for the page of the piece. */
  public static String onPage(Countdown countdown, FormingWindow figures, Instant now) {
    return switch (countdown.state()) {
      case OPEN ->
          "Soft. Severe forming is best finished within %s and must be within %s%s."
              .formatted(
                  minutesLeft(countdown.bestLeftMin()),
                  minutesLeft(countdown.leftMin()),
                  at(", by ", countdown.closesAt(), now));
      case CLOSING ->
          "Hardening. Severe forming must be finished within %s%s."
              .formatted(minutesLeft(countdown.leftMin()), at(", by ", countdown.closesAt(), now));
      case PAST -> past(countdown, now);
      case IN_FREEZER -> frozen(countdown, figures, now);
      case NOT_KNOWN ->
          "The shipped table has no figure for how long %s stays soft at room temperature, so nothing"
                  .formatted(figures.alloy())
              + " is counted down here. Ask whoever keeps the approved heat-treatment specification.";
    };
  }

  private static String past(Countdown countdown, Instant now) {
    String when = at(" since ", countdown.closesAt(), now);
    String why =
        countdown.keptTooLong()
            ? "It lay frozen longer than the table allows: too hard for severe forming" + when
            : "Too hard for severe forming" + when;
    return why + (countdown.inFreezer() ? ". It is still in the freezer." : ".");
  }

  private static String frozen(Countdown countdown, FormingWindow figures, Instant now) {
    return switch (countdown.runsInFreezer()) {
      case NOT ->
          "In the freezer: the clock stands still%s. It keeps%s; once out, the clock goes on."
              .formatted(
                  countdown.leftMin() == null
                      ? ""
                      : " with " + minutesLeft(countdown.leftMin()) + " left",
                  at(" until ", countdown.closesAt(), now));
      case FROZEN_LATE ->
          "In the freezer, but the clock runs on%s: the table allows %s out of the freezer before it"
                  .formatted(
                      at(", closing ", countdown.closesAt(), now),
                      minutes(figures.freezeWithinMin()))
              + " is frozen, and it was more.";
      case TOO_WARM ->
          figures.storage().isEmpty()
              ? "In the freezer. The shipped table does not say how long %s keeps there; ask whoever"
                      .formatted(figures.alloy())
                  + " keeps the approved heat-treatment specification."
              : "In the freezer, but the clock runs on%s: it is warmer there than any row of the table, so"
                      .formatted(at(", closing ", countdown.closesAt(), now))
                  + " nothing says that it keeps.";
    };
  }

  /** What was used up, and where; empty if nothing is counted. */
  public static String spent(Countdown countdown) {
    Spent spent = countdown.spent();
    String before = "%s before the freezer".formatted(spentMinutes(spent.before()));
    String inside = ", %s in it".formatted(spentMinutes(spent.inside()));
    String after = ", %s after".formatted(spentMinutes(spent.after()));
    return "On the clock: %s%s."
        .formatted(
            spentMinutes(spent.total()),
            spent.inside() + spent.after() > 0 || countdown.inFreezer()
                ? " (" + before + inside + after + ")"
                : "");
  }

  /** What the table says of freezing it now; empty if it says nothing. */
  public static String onFreezing(Countdown countdown, FormingWindow figures) {
    Sourced within = figures.freezeWithinMin();
    if (within == null) {
      return "";
    }
    String limit = minutes(within);
    String gone = spentMinutes(countdown.spent().total());
    return countdown.spent().total() > within.value()
        ? "The table allows %s out of the freezer before it is frozen, and %s are gone: the clock will run on in there."
            .formatted(limit, gone)
        : "The table allows %s out of the freezer before it is frozen; %s are gone."
            .formatted(limit, gone);
  }

  /** Whether it was frozen in time, as a clause; empty if the table does not say. */
  static String frozenLate(Countdown then, FormingWindow figures) {
    Sourced within = figures.freezeWithinMin();
    if (within == null) {
      return "";
    }
    String said = spentMinutes(then.spent().total());
    return then.spent().total() > within.value()
        ? ", after %s out of it: more than the %s of the table, so its clock runs on"
            .formatted(said, minutes(within))
        : ", after %s out of it: within the %s of the table".formatted(said, minutes(within));
  }

  /** {@code In at −20 °C (−4 °F) Tue 14:10, out Tue 16:30} */
  public static String stay(Stay stay, Instant now) {
    return "In at %s %s%s"
        .formatted(degrees(stay), LogTime.of(stay.in(), now), at(", out ", stay.out(), now));
  }

  /** {@code −20 °C (−4 °F)} */
  static String degrees(Stay stay) {
    return (number(stay.celsius()) + " °C (" + number(stay.fahrenheit()) + " °F)")
        .replace('-', '−');
  }

  private static String number(double value) {
    String written = String.format(Locale.ROOT, "%.1f", value);
    return written.endsWith(".0") ? written.substring(0, written.length() - 2) : written;
  }

  private static String minutes(@Nullable Sourced figure) {
    return figure == null ? "?" : number(figure.value()) + " min";
  }

  private static String minutesLeft(@Nullable Double minutes) {
    return minutes == null ? "?" : inHours((long) Math.floor(minutes));
  }

  private static String spentMinutes(double minutes) {
    return inHours((long) Math.ceil(minutes));
  }

  private static String inHours(long minutes) {
    Duration time = Duration.ofMinutes(minutes);
    return time.toHours() == 0
        ? minutes + " min"
        : time.toHours() + " h " + String.format(Locale.ROOT, "%02d", time.toMinutesPart());
  }

  private static String at(String before, @Nullable Instant then, Instant now) {
    return then == null ? "" : before + LogTime.of(then, now);
  }
}
