package dev.flangewright.heat;

import dev.flangewright.materials.FormingWindow;
import dev.flangewright.materials.Sourced;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Goes through what happened since the quench, in order, and adds the minutes up. */
final class Elapsed {

  private static final double MIN_PER_DAY = 24 * 60;

  private final FormingWindow figures;
  private Instant until;
  private Spent spent = Spent.NOTHING;
  private double keptMin;
  private double longestMin = Double.POSITIVE_INFINITY;
  private @Nullable Instant keepsUntil;
  private boolean keptTooLong;
  private boolean hasBeenInside;
  private boolean inside;
  private ClockRuns runs = ClockRuns.NOT;

  Elapsed(Instant quenchedAt, FormingWindow figures) {
    this.until = quenchedAt;
    this.figures = figures;
  }

  /** Adds a stay in the freezer, up to the instant if it is longer. */
  void pass(Stay stay, Instant at) {
    passOutside(stay.in());
    inside = stay.holds(at);
    hasBeenInside = true;
    Instant out = stay.out();
    Instant end = out == null || out.isAfter(at) ? at : out;
    double minutes = minutes(stay.in(), end);
    OptionalDouble keeps = keepsMin(stay);
    runs = stops(keeps);
    if (runs == ClockRuns.NOT) {
      keep(stay.in(), minutes, keeps.orElseThrow());
    } else {
      spent = spent.insideToo(minutes);
    }
    until = end;
  }

  private void keep(Instant in, double minutes, double mostMin) {
    longestMin = Math.min(longestMin, mostMin);
    if (!keptTooLong) {
      keepsUntil = later(in, Math.max(0, longestMin - keptMin));
    }
    keptMin += minutes;
    keptTooLong |= keptMin > longestMin;
  }

  /** Adds what has passed out of the freezer since the last event. */
  void passOutside(Instant end) {
    if (end.isAfter(until)) {
      spent = spent.outside(minutes(until, end), hasBeenInside);
      until = end;
    }
  }

  private OptionalDouble keepsMin(Stay stay) {
    return figures.storage().stream()
        .filter(row -> stay.celsius() <= row.atOrBelowC())
        .mapToDouble(row -> row.longestDays().value() * MIN_PER_DAY)
        .max();
  }

  private ClockRuns stops(OptionalDouble keeps) {
    if (keeps.isEmpty()) {
      return ClockRuns.TOO_WARM;
    }
    boolean late = isMore(spent.total(), figures.freezeWithinMin());
    return late || isPastByClock() ? ClockRuns.FROZEN_LATE : ClockRuns.NOT;
  }

  Countdown countdown(Instant at) {
    boolean paused = inside && runs == ClockRuns.NOT;
    return new Countdown(
        state(),
        inside,
        inside ? runs : ClockRuns.NOT,
        spent,
        left(figures.severeFromMin()),
        left(figures.severeToMin()),
        paused || keptTooLong ? keepsUntil : closesByClock(at),
        keptTooLong);
  }

  private WindowState state() {
    if (keptTooLong || isPastByClock()) {
      return WindowState.PAST;
    }
    if (inside) {
      return WindowState.IN_FREEZER;
    }
    if (figures.severeToMin() == null) {
      return WindowState.NOT_KNOWN;
    }
    Sourced from = figures.severeFromMin();
    boolean closing = from != null && spent.total() >= from.value();
    return closing ? WindowState.CLOSING : WindowState.OPEN;
  }

  private @Nullable Instant closesByClock(Instant at) {
    Sourced to = figures.severeToMin();
    return to == null ? null : later(at, to.value() - spent.total());
  }

  private boolean isPastByClock() {
    Sourced to = figures.severeToMin();
    return to != null && spent.total() >= to.value();
  }

  private @Nullable Double left(@Nullable Sourced figure) {
    return figure == null ? null : Math.max(0, figure.value() - spent.total());
  }

  private static boolean isMore(double minutes, @Nullable Sourced limit) {
    return limit != null && minutes > limit.value();
  }

  private static double minutes(Instant from, Instant to) {
    return Duration.between(from, to).toMillis() / 60_000.0;
  }

  private static Instant later(Instant than, double minutes) {
    return than.plusMillis(Math.round(minutes * 60_000));
  }
}
