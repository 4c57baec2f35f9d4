package dev.flangewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.flangewright.materials.FormingWindow;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked by hand from the rows that {@link Windows} names. That time before the freezer counts and
 * goes on after it is the row's own note, "time out of the freezer counts" (MIL-H-6088G / AMS 2770
 * refrigeration table, from memory).
 */
class CountdownTest {

  private static final Instant QUENCH = Instant.parse("2026-06-02T12:00:00Z");
  private static final FormingWindow ALLOY_2024 = Windows.of2024();
  private static final FormingWindow ALLOY_7075 = Windows.of7075();

  private static Instant min(double minutes) {
    return QUENCH.plusMillis(Math.round(minutes * 60_000));
  }

  private static Instant days(double days) {
    return min(days * 24 * 60);
  }

  private static Stay stay(double celsius, double inMin, @Nullable Double outMin) {
    return new Stay(min(inMin), outMin == null ? null : min(outMin), celsius);
  }

  private static Countdown at(Instant at, FormingWindow figures, Stay... stays) {
    return Countdown.at(at, QUENCH, List.of(stays), figures);
  }

  @ParameterizedTest
  @CsvSource({
    "0,    OPEN,    10, 30",
    "4,    OPEN,     6, 26",
    "9.99, OPEN,     0.01, 20.01",
    "10,   CLOSING,  0, 20",
    "29.9, CLOSING,  0, 0.1",
    "30,   PAST,     0, 0",
    "600,  PAST,     0, 0"
  })
  void on_the_bench_2024_is_best_formed_in_10_min_and_must_be_in_30(
      double minutes, WindowState state, double bestLeft, double left) {
    Countdown countdown = at(min(minutes), ALLOY_2024);

    assertThat(countdown.state()).isEqualTo(state);
    assertThat(countdown.bestLeftMin()).isCloseTo(bestLeft, within(1e-6));
    assertThat(countdown.leftMin()).isCloseTo(left, within(1e-6));
    assertThat(countdown.closesAt()).isEqualTo(min(30));
  }

  @Test
  void the_freezer_stops_the_clock_and_thawing_gives_nothing_back() {
    Stay cold = stay(-20, 5, 245.0);

    Countdown inside = at(min(120), ALLOY_2024, cold);
    assertThat(inside.state()).isEqualTo(WindowState.IN_FREEZER);
    assertThat(inside.paused()).isTrue();
    assertThat(inside.leftMin()).isCloseTo(25, within(1e-6));
    assertThat(inside.closesAt()).as("30 days at −18 °C or below").isEqualTo(min(5 + 30 * 1440));

    Countdown out = at(min(252), ALLOY_2024, cold);
    assertThat(out.state()).as("5 min before and 7 min after").isEqualTo(WindowState.CLOSING);
    assertThat(out.spent()).isEqualTo(new Spent(5, 0, 7));
    assertThat(out.leftMin()).isCloseTo(18, within(1e-6));
    assertThat(out.closesAt()).isEqualTo(min(270));

    assertThat(at(min(270), ALLOY_2024, cold).state()).isEqualTo(WindowState.PAST);
  }

  @ParameterizedTest
  @CsvSource({"-12, 1", "-17.9, 1", "-18, 30", "-22, 30", "-23, 90", "-40, 90"})
  void how_long_2024_keeps_goes_by_the_coldest_row_that_the_freezer_reaches(
      double celsius, double longest) {
    Stay cold = stay(celsius, 10, null);
    Instant limit = days(longest).plus(Duration.ofMinutes(10));

    assertThat(at(limit, ALLOY_2024, cold).state()).isEqualTo(WindowState.IN_FREEZER);
    Countdown later = at(limit.plusSeconds(60), ALLOY_2024, cold);
    assertThat(later.state()).isEqualTo(WindowState.PAST);
    assertThat(later.keptTooLong()).isTrue();
    assertThat(later.closesAt()).isEqualTo(limit);
  }

  @Test
  void what_was_kept_too_long_stays_past_when_it_is_taken_out() {
    Stay cold = new Stay(min(5), days(31), -20);

    Countdown out = at(days(31).plusSeconds(60), ALLOY_2024, cold);

    assertThat(out.state()).isEqualTo(WindowState.PAST);
    assertThat(out.inFreezer()).isFalse();
    assertThat(out.closesAt()).isEqualTo(min(5 + 30 * 1440));
  }

  @Test
  void several_stays_add_up_and_the_warmest_sets_how_long_it_keeps() {
    Stay deep = new Stay(min(2), days(20), -30);
    Stay lessDeep = new Stay(days(20).plusSeconds(120), null, -20);

    Countdown inside = at(days(21), ALLOY_2024, deep, lessDeep);

    assertThat(inside.state()).isEqualTo(WindowState.IN_FREEZER);
    double keptBefore = 20 * 1440 - 2;
    assertThat(inside.closesAt())
        .isEqualTo(days(20).plusSeconds(120).plusSeconds(Math.round((43_200 - keptBefore) * 60)));
    assertThat(inside.spent()).isEqualTo(new Spent(2, 0, 2));
  }

  @Test
  void a_stay_in_a_warmer_freezer_after_a_long_cold_one_is_past_at_once() {
    Stay deep = new Stay(min(2), days(3), -30);
    Stay warmer = new Stay(days(3).plusSeconds(60), null, -15);

    Countdown inside = at(days(3).plusSeconds(180), ALLOY_2024, deep, warmer);

    assertThat(inside.state()).as("3 days, and −12 °C keeps it 1").isEqualTo(WindowState.PAST);
    assertThat(inside.closesAt()).isEqualTo(days(3).plusSeconds(60));
  }

  @Test
  void a_freezer_warmer_than_any_row_does_not_stop_the_clock() {
    Countdown inside = at(min(20), ALLOY_2024, stay(-11, 5, null));

    assertThat(inside.state()).isEqualTo(WindowState.IN_FREEZER);
    assertThat(inside.runsInFreezer()).isEqualTo(ClockRuns.TOO_WARM);
    assertThat(inside.spent()).isEqualTo(new Spent(5, 15, 0));
    assertThat(inside.closesAt()).isEqualTo(min(30));
    assertThat(at(min(30), ALLOY_2024, stay(-11, 5, null)).state()).isEqualTo(WindowState.PAST);
  }

  @Test
  void metal_frozen_later_than_the_table_allows_is_not_counted_as_kept() {
    assertThat(at(min(60), ALLOY_2024, stay(-20, 15, null)).paused()).isTrue();

    Countdown late = at(min(25), ALLOY_2024, stay(-20, 15.1, null));
    assertThat(late.runsInFreezer()).isEqualTo(ClockRuns.FROZEN_LATE);
    assertThat(late.leftMin()).isCloseTo(5, within(1e-6));
  }

  @Test
  void time_out_of_the_freezer_counts_towards_the_delay_before_it_is_frozen_again() {
    Stay first = stay(-20, 8, 100.0);

    assertThat(at(min(200), ALLOY_2024, first, stay(-20, 107, null)).paused())
        .as("8 and 7 min out of it")
        .isTrue();
    assertThat(at(min(120), ALLOY_2024, first, stay(-20, 108, null)).runsInFreezer())
        .as("8 and 8 min out of it")
        .isEqualTo(ClockRuns.FROZEN_LATE);
  }

  @Test
  void for_7075_the_table_tells_how_long_it_keeps_frozen_and_nothing_of_the_bench() {
    Countdown bench = at(min(300), ALLOY_7075);
    assertThat(bench.state()).isEqualTo(WindowState.NOT_KNOWN);
    assertThat(bench.leftMin()).isNull();
    assertThat(bench.closesAt()).isNull();

    Stay cold = stay(-14, 30, null);
    assertThat(at(days(7), ALLOY_7075, cold).state()).isEqualTo(WindowState.IN_FREEZER);
    assertThat(at(days(7), ALLOY_7075, cold).closesAt()).isEqualTo(min(30 + 7 * 1440));
    assertThat(at(days(7.1), ALLOY_7075, cold).state()).isEqualTo(WindowState.PAST);
  }

  @Test
  void an_alloy_without_any_row_is_not_known_and_never_past() {
    assertThat(at(days(50), Windows.ofNone()).state()).isEqualTo(WindowState.NOT_KNOWN);
    Countdown frozen = at(days(50), Windows.ofNone(), stay(-30, 5, null));
    assertThat(frozen.state()).isEqualTo(WindowState.IN_FREEZER);
    assertThat(frozen.paused()).isFalse();
    assertThat(frozen.closesAt()).isNull();
  }

  @Test
  void what_happened_later_than_the_instant_asked_for_is_left_out() {
    Countdown earlier = at(min(4), ALLOY_2024, stay(-20, 5, 20.0));
    assertThat(earlier.state()).isEqualTo(WindowState.OPEN);
    assertThat(earlier.spent()).isEqualTo(new Spent(4, 0, 0));

    Countdown meanwhile = at(min(10), ALLOY_2024, stay(-20, 5, 20.0));
    assertThat(meanwhile.inFreezer()).isTrue();
  }

  @Test
  void it_is_told_in_words_that_leave_no_minute_too_much() {
    Countdown open = at(min(4.5), ALLOY_2024);
    assertThat(CountdownWords.onPage(open, ALLOY_2024, min(4.5)))
        .startsWith("Soft. Severe forming is best finished within 5 min and must be within 25 min");
    assertThat(CountdownWords.spent(open)).isEqualTo("On the clock: 5 min.");
    assertThat(CountdownWords.inList(open, min(4.5))).isEqualTo("forming window closes in 25 min");
    assertThat(CountdownWords.onPage(at(min(9), ALLOY_7075), ALLOY_7075, min(9)))
        .contains(
            "no figure for how long 7075 stays soft", "approved heat-treatment specification");
    assertThat(CountdownWords.degrees(stay(-23, 1, null))).isEqualTo("−23 °C (−9.4 °F)");
  }
}
