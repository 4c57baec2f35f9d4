package dev.flangewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.flangewright.materials.FormingWindow;
import dev.flangewright.people.Refused;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be told of a quench, the freezer and forming past the window. */
class QuenchTest {

  private static final Instant NOON = Instant.parse("2026-06-02T12:00:00Z");
  private static final FormingWindow FIGURES = Windows.of2024();
  private static final QuenchedPiece PIECE = new QuenchedPiece(7, 1, "2024");

  private static Instant min(long minutes) {
    return NOON.plusSeconds(60 * minutes);
  }

  private static Told at(long minutes) {
    return because(minutes, "");
  }

  private static Told because(long minutes, String note) {
    return new Told("ann", min(minutes), note, min(minutes));
  }

  private static Quench quench() {
    return new Quench(PIECE, NOON, at(0), 3);
  }

  @Test
  void a_quench_is_told_up_to_a_day_later_and_never_before_it_was() {
    assertThat(new Quench(PIECE, min(-24 * 60), at(0), 3).quenchedAt()).isEqualTo(min(-24 * 60));
    assertThat(new Quench(PIECE, min(3), at(0), 3).quenchedAt())
        .as("a clock that is fast")
        .isEqualTo(NOON);
    refused("more than 24 hours back", () -> new Quench(PIECE, min(-24 * 60 - 1), at(0), 3));
    refused("in the future", () -> new Quench(PIECE, min(6), at(0), 3));
  }

  @Test
  void a_new_quench_is_later_than_the_one_before() {
    quench().refuseUnlessBefore(min(1));
    refused("must be later", () -> quench().refuseUnlessBefore(NOON));
  }

  @Test
  void it_goes_into_the_freezer_once_and_out_again_only_from_there() {
    Quench quench = quench();
    refused("not in the freezer", () -> quench.outOfFreezer(at(1)));
    quench.intoFreezer(-20, FIGURES, at(5));
    refused("in the freezer already", () -> quench.intoFreezer(-20, FIGURES, at(6)));
    refused("before the last one", () -> quench.outOfFreezer(at(4)));
    quench.outOfFreezer(at(100));
    refused("before the last one", () -> quench.intoFreezer(-20, FIGURES, at(99)));
    quench.intoFreezer(-25, FIGURES, at(105));

    assertThat(quench.stays().stream().map(ColdStay::stay).toList())
        .containsExactly(new Stay(min(5), min(100), -20), new Stay(min(105), null, -25));
  }

  @Test
  void cold_does_not_make_it_soft_again() {
    Quench quench = quench();

    refused("past", () -> quench.intoFreezer(-20, FIGURES, at(30)));
    quench.intoFreezer(-20, FIGURES, at(29));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-101, 21, Double.NaN, Double.POSITIVE_INFINITY})
  void a_temperature_that_no_freezer_has_is_not_taken(double celsius) {
    refused("celsius", () -> quench().intoFreezer(celsius, FIGURES, at(1)));
  }

  @Test
  void forming_past_the_window_is_let_once_with_a_reason_and_only_when_it_is_past() {
    Quench quench = quench();
    refused("not past", () -> quench.letBeFormedLate(FIGURES, because(29, "it is soft enough")));
    refused("reason is missing", () -> quench.letBeFormedLate(FIGURES, at(31)));
    quench.letBeFormedLate(FIGURES, because(31, "two coupons bent without a crack"));
    refused("already", () -> quench.letBeFormedLate(FIGURES, because(32, "again")));

    LateForming late = quench.late();
    assertThat(late).isNotNull();
    assertThat(late.told().note()).isEqualTo("two coupons bent without a crack");
  }

  @Test
  void of_7075_nothing_is_past_on_the_bench_and_so_nothing_is_let() {
    Quench quench = quench();
    refused("not past", () -> quench.letBeFormedLate(Windows.of7075(), because(6000, "it is old")));
  }

  @Test
  void it_is_taken_back_with_the_line_that_told_it_or_an_earlier_one() {
    Quench quench = quench();
    quench.isTakenBackWith(4);
    assertThat(quench.takenBack()).isFalse();
    quench.isTakenBackWith(3);
    assertThat(quench.takenBack()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "14:10, 2026-06-02T12:15:00Z, 2026-06-02T12:10:00Z",
    "14:18, 2026-06-02T12:15:00Z, 2026-06-02T12:18:00Z",
    "14:21, 2026-06-02T12:15:00Z, 2026-06-01T12:21:00Z",
    "23:50, 2026-06-01T22:20:00Z, 2026-06-01T21:50:00Z",
    "02:30, 2026-03-29T10:00:00Z, 2026-03-29T01:30:00Z"
  })
  void a_time_of_day_is_the_last_such_time_on_the_wall_of_the_workshop(
      String typed, Instant told, Instant meant) {
    assertThat(QuenchTime.read(typed, told, ZoneId.of("Europe/Paris"))).isEqualTo(meant);
  }

  @Test
  void an_empty_time_is_none_and_a_word_is_refused() {
    assertThat(QuenchTime.read(" ", NOON, ZoneId.of("UTC"))).isNull();
    refused("as 14:10", () -> QuenchTime.read("just now", NOON, ZoneId.of("UTC")));
  }

  private static void refused(String why, Runnable entry) {
    assertThatThrownBy(entry::run).isInstanceOf(Refused.class).hasMessageContaining(why);
  }
}
