package dev.flangewright.bench;

import static dev.flangewright.bench.ABench.CUT;
import static dev.flangewright.bench.ABench.INSPECT;
import static dev.flangewright.bench.ABench.SET;
import static dev.flangewright.bench.ABench.SHRINK;
import static dev.flangewright.bench.ABench.TREAT;
import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.bench.NextJob.Kind;
import dev.flangewright.people.Clearance;
import dev.flangewright.people.Role;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What the bench says to form next. Each scenario: what is there, who asks, and the list expected,
 * a line a job: its sentence, then the reasons, the weightiest first. The order itself is common
 * practice, no source.
 */
class RankingTest {

  private final ABench bench = new ABench();

  @Test
  void a_fitter_on_a_busy_day_is_led_from_what_hardens_to_what_is_new() {
    bench.jig("F4", 1).part("F1-S1").part("F2-S1").part("F3-S1").part("F4-S1").part("F5-S1");
    bench.part("F6-S1").part("F7-S1");
    bench.scrapped("F2-S1").waitsAt("F3-S1", SHRINK, 4);
    bench.waitsAt("F5-S1", SET, 8).softFor("F5-S1", 40);
    bench.waitsAt("F6-S1", SET, 8).softFor("F6-S1", 15);
    bench.begun("F7-S1", SHRINK, "fitter");

    expect(
        Role.FITTER,
        "Start “Set” on F6-S1 piece 1: forming window closes in 15 min; 8 of 11 stages done",
        "Start “Set” on F5-S1 piece 1: forming window closes in 40 min; 8 of 11 stages done",
        "Finish “First flange” on F7-S1 piece 1: 4 of 11 stages done; you have begun it",
        "Start “First flange” on F3-S1 piece 1: 4 of 11 stages done",
        "Begin piece 2 of F2-S1: piece 1 was scrapped",
        "Begin piece 1 of F4-S1: not begun; F4 is number 1 in the jig",
        "Begin piece 1 of F1-S1: not begun");
  }

  @Test
  void an_inspector_comes_to_holds_and_inspections_and_sees_that_the_rest_is_not_his() {
    bench.part("F1-S1").part("F2-S1").part("F3-S1");
    bench.held("F2-S1").waitsAt("F3-S1", INSPECT, 9);

    expect(
        Role.INSPECTOR,
        "Inspect F3-S1 piece 1: every stage is finished; it waits for its inspection",
        "Check “Edges” on F2-S1 piece 1: waits for the edge check; nobody can form it until then",
        "F1-S1 piece 1 waits to be begun: This account logs no work. (whoever forms: a volunteer, a"
            + " fitter or the lead); It needs somebody cleared to cut. (nobody yet; the lead clears"
            + " people); not begun");
  }

  @Test
  void to_a_fitter_held_and_finished_pieces_wait_for_an_inspector() {
    bench.part("F1-S1").part("F2-S1").held("F1-S1").waitsAt("F2-S1", INSPECT, 9);

    expect(
        Role.FITTER,
        "F2-S1 piece 1 waits at “Inspect”: Every stage is finished; it waits for its inspection."
            + " (an inspector or the lead)",
        "F1-S1 piece 1 waits at “Edges”: It waits for the edge check. (an inspector or the lead)");
  }

  @Test
  void somebody_not_cleared_for_the_stage_is_told_who_is() {
    bench.part("F1-S1").part("F2-S1").waitsAt("F1-S1", SHRINK, 4);
    Hands carl = new Hands("carl", Role.VOLUNTEER.permissions(), EnumSet.of(Clearance.CUT));

    assertThat(told(bench.asks(carl)))
        .containsExactly(
            "Begin piece 1 of F2-S1: not begun",
            "F1-S1 piece 1 waits at “First flange”: It needs somebody cleared to form shrink"
                + " flanges. (ann, ben; the lead clears people); 4 of 11 stages done");
  }

  @Test
  void a_damaged_block_missing_sheet_and_metal_too_hard_keep_their_jobs_waiting() {
    bench.part("F1-S1").part("F2-S1").part("F3-S1").part("F4-S1");
    bench.waitsAt("F1-S1", SHRINK, 4).damagedBlock("F1-S1");
    bench.noSheetFor("F2-S1");
    bench.waitsAt("F3-S1", SET, 8).tooHard("F3-S1");

    expect(
        Role.LEAD,
        "Begin piece 1 of F4-S1: not begun; the first of its kind: for the lead",
        "F3-S1 piece 1 waits at “Set”: Its forming window is past. (the lead); 8 of 11 stages done",
        "F1-S1 piece 1 waits at “First flange”: The form block, stage 1 of F1-S1 needs repair."
            + " (whoever keeps the blocks); 4 of 11 stages done",
        "F2-S1 piece 1 waits to be begun: No sheet of 2024-O 1.2 mm is released. ("
            + CutWords.RELEASED_BY
            + "); not begun; the first of its kind: for the lead");
  }

  @Test
  void sheet_is_asked_for_until_it_is_cut_and_a_block_until_the_stage_is_begun() {
    bench.part("F1-S1").part("F2-S1").noSheetFor("F1-S1").damagedBlock("F2-S1");
    bench.waitsAt("F1-S1", SHRINK, 4).begun("F2-S1", SHRINK, "lead");

    assertThat(bench.asks(Role.LEAD)).extracting(NextJob::kind).containsOnly(Kind.CARRY_ON);
  }

  @Test
  void a_window_counts_only_for_a_stage_that_forms_the_metal() {
    bench.part("F1-S1").part("F2-S1");
    bench.waitsAt("F1-S1", TREAT, 6).tooHard("F1-S1").waitsAt("F2-S1", CUT, 9).softFor("F2-S1", 5);

    expect(
        Role.LEAD,
        "Start “Lay out and cut” on F2-S1 piece 1: 9 of 11 stages done",
        "Start “Quench” on F1-S1 piece 1: 6 of 11 stages done");
  }

  @Test
  void what_somebody_else_has_begun_is_theirs() {
    bench.part("F1-S1").begun("F1-S1", SHRINK, "ann");

    expect(
        Role.FITTER,
        "F1-S1 piece 1 waits at “First flange”: ann has begun “First flange”. (ann); 4 of 11 stages"
            + " done");
  }

  @Test
  void frames_that_the_jig_needs_come_in_its_order_the_others_along_the_hull() {
    bench.jig("F9", 2).jig("F10", 1).jig("F8", 2);
    bench.part("F2-S1").part("F1-S1").part("F9-S1").part("F10-S1").part("F8-S1");

    assertThat(numbers(Role.FITTER)).containsExactly("F10-S1", "F8-S1", "F9-S1", "F1-S1", "F2-S1");
  }

  @Test
  void a_set_up_in_the_vice_is_used_before_another_is_made() {
    bench.part("F1-S1").part("F5-S1L").part("F5-S1R").part("F7-S1L").part("F7-S1R");
    bench.waitsAt("F1-S1", SHRINK, 4).waitsAt("F5-S1R", SHRINK, 4).waitsAt("F7-S1R", SHRINK, 4);
    bench.waitsAt("F5-S1L", INSPECT, 9).waitsAt("F7-S1L", INSPECT, 9);
    bench.workedOver("F5-S1L", "ann", true).workedOver("F7-S1L", "fitter", true);

    assertThat(told(bench.asks(Role.FITTER)).subList(0, 3))
        .containsExactly(
            "Start “First flange” on F7-S1R piece 1: 4 of 11 stages done; F7-S1 is set up already:"
                + " you worked on it last",
            "Start “First flange” on F5-S1R piece 1: 4 of 11 stages done; F5-S1 was set up today"
                + " for its other hand",
            "Start “First flange” on F1-S1 piece 1: 4 of 11 stages done");
  }

  @Test
  void only_the_set_up_last_worked_on_is_in_the_vice() {
    bench.part("F1-S1").part("F2-S1").part("F3-S1");
    bench.waitsAt("F1-S1", SHRINK, 4).waitsAt("F2-S1", SHRINK, 4).waitsAt("F3-S1", SHRINK, 4);
    bench.workedOver("F2-S1", "fitter", true).workedOver("F3-S1", "fitter", false);

    assertThat(numbers(Role.FITTER)).containsExactly("F3-S1", "F1-S1", "F2-S1");
  }

  @Test
  void the_hard_first_of_its_kind_goes_to_the_lead_and_the_easy_one_to_the_volunteer() {
    bench.part("F1-S1", "MODERATE").part("F2-S1", "HIGH").part("F3-S1", "LOW");

    expect(
        Role.LEAD,
        "Begin piece 1 of F2-S1: not begun; high risk by the figures (split at the edge) and the"
            + " first of its kind: for the lead",
        "Begin piece 1 of F1-S1: not begun; the first of its kind: for the lead",
        "Begin piece 1 of F3-S1: not begun");
    expect(
        Role.VOLUNTEER,
        "Begin piece 1 of F3-S1: not begun; low risk by the figures: good to learn on",
        "Begin piece 1 of F1-S1: not begun",
        "Begin piece 1 of F2-S1: not begun; high risk by the figures (split at the edge): ask the"
            + " lead first");
  }

  @Test
  void a_hard_part_whose_blocks_are_proven_is_no_longer_kept_for_the_lead() {
    bench.part("F3-S1L", "HIGH").part("F3-S1R", "HIGH").part("F3-S2", "HIGH").accepted("F3-S1L");

    assertThat(numbers(Role.LEAD)).containsExactly("F3-S2", "F3-S1R");
  }

  @Test
  void of_parts_not_begun_the_fullest_frame_comes_first_then_the_foremost() {
    bench.part("F2-S1").part("F7-S1").part("F7-S2").part("F1-S1").accepted("F7-S1");

    expect(
        Role.FITTER,
        "Begin piece 1 of F7-S2: not begun; only this one is left on F7",
        "Begin piece 1 of F1-S1: not begun",
        "Begin piece 1 of F2-S1: not begun");
  }

  @Test
  void a_job_passed_on_goes_to_the_end_of_ones_own_list_and_others_see_why() {
    bench.part("F1-S1").part("F2-S1").passedOn("F1-S1", "fitter", "tool is at home");

    List<NextJob> own = bench.asks(Role.FITTER);
    assertThat(own).extracting(NextJob::partNumber).containsExactly("F2-S1", "F1-S1");
    assertThat(own.get(1).passedOnBecause()).isEqualTo("tool is at home");
    expect(
        Role.VOLUNTEER,
        "Begin piece 1 of F1-S1: not begun; fitter passed on it: tool is at home",
        "Begin piece 1 of F2-S1: not begun");
  }

  @Test
  void once_somebody_logs_on_the_piece_nobody_has_passed_on_it() {
    bench.part("F1-S1").passedOn("F1-S1", "fitter", "tool is at home");
    bench.waitsAt("F1-S1", CUT, 0);

    expect(Role.FITTER, "Start “Lay out and cut” on F1-S1 piece 1: 0 of 11 stages done");
  }

  @Test
  void both_hands_are_offered_together_only_where_both_are_to_be_begun() {
    bench.part("F1-S1L").part("F1-S1R").part("F2-S1L").part("F2-S1R").accepted("F2-S1L");

    assertThat(bench.asks(Role.FITTER))
        .extracting(NextJob::twinToBegin)
        .containsExactly(null, "F1-S1R", "F1-S1L");
  }

  @Test
  void a_part_that_an_accepted_piece_serves_is_not_on_the_list() {
    bench.part("F2-S1").scrapped("F2-S1").accepted("F2-S1");

    assertThat(bench.asks(Role.LEAD)).isEmpty();
  }

  @Test
  void parts_without_figures_come_last_with_the_reason() {
    bench.part("F1-S1", null).part("F9-S1", "HIGH");

    assertThat(bench.asks(Role.VOLUNTEER))
        .extracting(NextJob::kind)
        .containsExactly(Kind.BEGIN, Kind.NOT_READY);
    assertThat(bench.asks(Role.VOLUNTEER).get(1).reasons()).containsExactly("no contour yet");
  }

  @Test
  void whoever_only_looks_on_sees_the_list_of_somebody_cleared_for_everything() {
    bench.part("F1-S1").part("F2-S1").waitsAt("F2-S1", SHRINK, 4);

    assertThat(bench.asks(new Hands("guest", Set.of(), Set.of())))
        .extracting(NextJob::kind)
        .containsExactly(Kind.CARRY_ON, Kind.BEGIN);
  }

  @Test
  void the_same_bench_gives_the_same_list_in_whatever_order_it_is_read() {
    for (int i = 1; i <= 30; i++) {
      bench.jig("F" + i % 7, i % 3 + 1).part("F" + i % 7 + "-S%02d".formatted(i), "LOW");
    }
    bench.waitsAt("F3-S03", SHRINK, 4).workedOver("F3-S03", "fitter", true);
    bench.passedOn("F4-S04", "fitter", "wrist hurts").passedOn("F5-S05", "ann", "wrist hurts");
    List<NextJob> expected = bench.asks(Role.FITTER);

    for (long seed = 1; seed <= 50; seed++) {
      assertThat(bench.shuffled(seed).asks(Role.FITTER)).as("seed %d", seed).isEqualTo(expected);
    }
  }

  private void expect(Role who, String... lines) {
    assertThat(told(bench.asks(who))).containsExactly(lines);
  }

  private List<String> numbers(Role who) {
    return bench.asks(who).stream().map(NextJob::partNumber).toList();
  }

  private static List<String> told(List<NextJob> jobs) {
    return jobs.stream().map(RankingTest::told).toList();
  }

  private static String told(NextJob job) {
    List<String> because = new ArrayList<>();
    job.waitsFor().forEach(bar -> because.add(bar.missing() + " (" + bar.clearedBy() + ")"));
    because.addAll(job.reasons());
    return job.sentence() + ": " + String.join("; ", because);
  }
}
