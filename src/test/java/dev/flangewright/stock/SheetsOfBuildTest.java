package dev.flangewright.stock;

import static dev.flangewright.stock.BatchCondition.HELD_BACK;
import static dev.flangewright.stock.BatchCondition.RECEIVED;
import static dev.flangewright.stock.BatchCondition.RELEASED;
import static dev.flangewright.stock.BatchCondition.USED_UP;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SheetsOfBuildTest {

  @Test
  void a_build_that_records_no_batch_lacks_nothing() {
    assertThat(build().lacking("2024", "T3", 0.8, false)).isEmpty();
    assertThat(build().asksFor(drawn("T3"))).isFalse();
  }

  @Test
  void batches_of_another_alloy_temper_or_thickness_say_nothing_of_this_one() {
    SheetsOfBuild build =
        build(
            sheet("A", "6061", "T3", 0.8, HELD_BACK),
            sheet("B", "2024", "O", 0.8, HELD_BACK),
            sheet("C", "2024", "T3", 1.0, HELD_BACK));
    assertThat(build.lacking("2024", "T3", 0.8, false)).isEmpty();
    assertThat(build.asksFor(drawn("T3"))).isFalse();
  }

  @Test
  void metal_of_which_every_batch_is_held_back_unchecked_or_used_up_is_lacking() {
    SheetsOfBuild build =
        build(
            sheet("B-1", "2024", "T3", 0.8, USED_UP),
            sheet("B-2", "2024", "T3", 0.8, HELD_BACK),
            sheet("B-3", "2024", "T3", 0.8, RECEIVED));
    assertThat(build.lacking("2024", "T3", 0.8, false))
        .hasValue(
            "No sheet of 2024 T3, 0.8 mm is released: B-1 is used up, B-2 is held back, B-3 is"
                + " received and its certificate is not checked yet.");
  }

  @Test
  void one_released_batch_is_enough() {
    SheetsOfBuild build =
        build(
            sheet("B-1", "2024", "T3", 0.8, HELD_BACK), sheet("B-2", "2024", "t3", 0.8, RELEASED));
    assertThat(build.lacking("2024", "T3", 0.8, false)).isEmpty();
    assertThat(build.released(drawn("T3"))).extracting(BatchLine::mark).containsExactly("B-2");
  }

  @Test
  void metal_that_is_all_used_up_asks_for_no_batch_any_more() {
    assertThat(build(sheet("B-1", "2024", "T3", 0.8, USED_UP)).asksFor(drawn("T3"))).isFalse();
    assertThat(build(sheet("B-1", "2024", "T3", 0.8, HELD_BACK)).asksFor(drawn("T3"))).isTrue();
  }

  @Test
  void a_piece_that_is_heat_treated_may_be_cut_of_another_temper_and_takes_its_own_first() {
    SheetsOfBuild build =
        build(sheet("B-1", "2024", "O", 0.8, RELEASED), sheet("B-2", "2024", "T42", 0.8, RELEASED));
    SheetNeed treated = new SheetNeed(new SheetMetal("2024", "T42", 0.8), true);
    assertThat(build.released(treated)).extracting(BatchLine::mark).containsExactly("B-2", "B-1");
    assertThat(build.released(drawn("T42"))).extracting(BatchLine::mark).containsExactly("B-2");
    assertThat(build(sheet("B-1", "2024", "O", 0.8, HELD_BACK)).lacking("2024", "T42", 0.8, true))
        .isPresent();
  }

  /** 20 SWG is 0.036 in, that is 0.9144 mm (British Standard 3737, from memory). */
  @Test
  void a_thickness_is_the_same_by_gauge_in_inches_and_in_millimetres() {
    SheetMetal drawn = new SheetMetal("5052", "O", 0.9144);
    assertThat(drawn.isSame(new SheetMetal("5052", "O", 0.036 * 25.4))).isTrue();
    assertThat(drawn.isSame(new SheetMetal("5052", "O", 0.91))).isTrue();
    assertThat(drawn.isSame(new SheetMetal("5052", "O", 0.9))).isFalse();
  }

  @Test
  void of_many_batches_the_first_four_are_named() {
    BatchLine[] many =
        IntStream.rangeClosed(1, 6)
            .mapToObj(i -> sheet("B-" + i, "2024", "T3", 0.8, HELD_BACK))
            .toArray(BatchLine[]::new);
    assertThat(build(many).lacking("2024", "T3", 0.8, false).orElseThrow())
        .contains("B-4 is held back and 2 more.")
        .doesNotContain("B-5");
  }

  private static SheetNeed drawn(String temper) {
    return new SheetNeed(new SheetMetal("2024", temper, 0.8), false);
  }

  private static SheetsOfBuild build(BatchLine... batches) {
    return new SheetsOfBuild(List.of(batches));
  }

  private static BatchLine sheet(
      String mark, String alloy, String temper, double mm, BatchCondition condition) {
    return new BatchLine(1, mark, alloy, temper, mm, "", condition);
  }
}
