package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.bench.NextJob.Kind;
import dev.flangewright.parts.Written;
import dev.flangewright.people.Role;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the bench says to form next, told as a morning in the workshop. */
class RankingTest {

  private final List<PartLine> parts = new ArrayList<>();
  private final List<PieceLine> pieces = new ArrayList<>();

  @Test
  void whoever_may_release_a_hold_is_sent_there_first_and_others_see_it_waiting() {
    part("TW-F02-S1", "F2", 1000, "MODERATE");
    part("TW-F02-S2", "F2", 1000, "MODERATE");
    held("TW-F02-S1", 1);
    inWork("TW-F02-S2", 1, 9);

    NextJob first = jobs(Role.INSPECTOR).get(0);
    assertThat(first.kind()).isEqualTo(Kind.CHECK);
    assertThat(first.partNumber()).isEqualTo("TW-F02-S1");
    assertThat(first.reasons())
        .containsExactly("waits for the edge check; nobody can form it until then");
    assertThat(jobs(Role.LEAD).get(0).kind()).isEqualTo(Kind.CHECK);

    List<NextJob> fitters = jobs(Role.FITTER);
    assertThat(fitters).extracting(NextJob::partNumber).containsExactly("TW-F02-S2", "TW-F02-S1");
    assertThat(fitters.get(1).kind()).isEqualTo(Kind.WAIT);
    assertThat(fitters.get(1).reasons()).containsExactlyElementsOf(first.reasons());
  }

  @Test
  void a_piece_ready_for_inspection_goes_first_to_the_inspector() {
    part("TW-F02-S1", "F2", 1000, "LOW");
    part("TW-F02-S2", "F2", 1000, "LOW");
    piece("TW-F02-S1", 1, PieceState.IN_WORK, 9, "Inspect", StageKind.INSPECT, false, false);
    inWork("TW-F02-S2", 1, 8);

    assertThat(jobs(Role.INSPECTOR)).extracting(NextJob::kind).first().isEqualTo(Kind.INSPECT);
    assertThat(jobs(Role.VOLUNTEER)).extracting(NextJob::kind).last().isEqualTo(Kind.WAIT);
  }

  @Test
  void of_pieces_in_work_the_one_further_along_comes_first() {
    part("TW-F02-S1", "F2", 1000, "LOW");
    part("TW-F02-S2", "F2", 1000, "LOW");
    part("TW-F02-S3", "F2", 1000, "LOW");
    inWork("TW-F02-S1", 1, 3);
    inWork("TW-F02-S2", 2, 7);

    List<NextJob> jobs = jobs(Role.FITTER);

    assertThat(jobs)
        .extracting(NextJob::partNumber)
        .containsExactly("TW-F02-S2", "TW-F02-S1", "TW-F02-S3");
    assertThat(jobs.get(0).sentence())
        .isEqualTo("Start “First flange in passes” on TW-F02-S2 piece 2");
    assertThat(jobs.get(0).reasons()).containsExactly("7 of 11 stages done");
  }

  @Test
  void a_scrapped_piece_is_made_again_before_a_new_part_is_begun() {
    part("TW-F02-S1", "F2", 1000, "MODERATE");
    part("TW-F09-S1", "F9", 5000, "MODERATE");
    scrapped("TW-F09-S1", 1);

    NextJob first = jobs(Role.FITTER).get(0);

    assertThat(first.sentence()).isEqualTo("Begin piece 2 of TW-F09-S1");
    assertThat(first.reasons()).containsExactly("piece 1 was scrapped");
    assertThat(first.pieceId()).isNull();
    assertThat(first.stageName()).isEqualTo("Lay out and cut");
  }

  @Test
  void a_part_that_an_accepted_piece_serves_is_not_on_the_list() {
    part("TW-F02-S1", "F2", 1000, "LOW");
    scrapped("TW-F02-S1", 1);
    accepted("TW-F02-S1", 2);

    assertThat(jobs(Role.LEAD)).isEmpty();
  }

  @Test
  void of_parts_not_begun_the_most_complete_frame_comes_first_then_the_foremost() {
    part("TW-F02-S1", "F2", 1000, "MODERATE");
    part("TW-F07-S1", "F7", 3000, "MODERATE");
    part("TW-F07-S2", "F7", 3000, "MODERATE");
    part("TW-F01-S1", "F1", 500, "MODERATE");
    accepted("TW-F07-S1", 1);

    List<NextJob> jobs = jobs(Role.FITTER);

    assertThat(jobs)
        .extracting(NextJob::partNumber)
        .containsExactly("TW-F07-S2", "TW-F01-S1", "TW-F02-S1");
    assertThat(jobs.get(0).reasons()).containsExactly("not begun", "only this one is left on F7");
  }

  @Test
  void frames_stand_in_the_order_of_their_positions_not_of_their_names() {
    part("A", "F10", 200, "MODERATE");
    part("B", "F9", 1000, "MODERATE");

    assertThat(jobs(Role.FITTER)).extracting(NextJob::partNumber).containsExactly("A", "B");
  }

  @Test
  void the_hard_first_of_its_kind_goes_to_the_lead_and_the_easy_one_to_the_volunteer() {
    part("TW-F02-S1", "F2", 1000, "LOW");
    part("TW-F03-S1", "F3", 1400, "HIGH");

    NextJob leads = jobs(Role.LEAD).get(0);
    assertThat(leads.partNumber()).isEqualTo("TW-F03-S1");
    assertThat(leads.reasons())
        .contains(
            "high risk by the figures (split at the edge) and the first of its kind: for the lead");

    List<NextJob> volunteers = jobs(Role.VOLUNTEER);
    assertThat(volunteers.get(0).partNumber()).isEqualTo("TW-F02-S1");
    assertThat(volunteers.get(0).reasons()).contains("low risk by the figures: good to learn on");
    assertThat(volunteers.get(1).reasons())
        .contains("high risk by the figures (split at the edge): ask the lead first");
  }

  @Test
  void a_hard_part_whose_blocks_are_proven_is_no_longer_kept_for_the_lead() {
    part("TW-F03-S1L", "F3", 1400, "HIGH");
    part("TW-F03-S1R", "F3", 1400, "HIGH");
    part("TW-F03-S2", "F3", 1400, "HIGH");
    accepted("TW-F03-S1L", 1);

    List<NextJob> jobs = jobs(Role.LEAD);

    assertThat(jobs)
        .extracting(NextJob::partNumber)
        .as("the right hand is formed over the blocks of the left")
        .containsExactly("TW-F03-S2", "TW-F03-S1R");
  }

  @Test
  void parts_without_figures_come_last_with_the_reason() {
    parts.add(line("TW-F01-S1", "F1", 500, null, null));
    parts.add(line("TW-F01-S2", "F1", 500, null, "flange outer is wider than its contour allows"));
    part("TW-F09-S1", "F9", 5000, "HIGH");

    List<NextJob> jobs = jobs(Role.VOLUNTEER);

    assertThat(jobs)
        .extracting(NextJob::kind)
        .containsExactly(Kind.BEGIN, Kind.NOT_READY, Kind.NOT_READY);
    assertThat(jobs.get(1).reasons()).containsExactly("no contour yet");
    assertThat(jobs.get(2).reasons().get(0)).contains("wider than its contour allows");
  }

  @Test
  void equal_jobs_stand_by_part_number_however_they_were_read() {
    for (int i = 0; i < 20; i++) {
      part("TW-F02-S%02d".formatted(i), "F2", 1000, "LOW");
    }
    List<String> expected = jobs(Role.FITTER).stream().map(NextJob::partNumber).toList();

    Collections.shuffle(parts, new Random(7));

    assertThat(expected).isSorted();
    assertThat(jobs(Role.FITTER)).extracting(NextJob::partNumber).isEqualTo(expected);
  }

  @Test
  void five_thousand_parts_are_ranked() {
    LongStream.range(0, 5000)
        .forEach(i -> part("P%04d".formatted(i), "F" + i % 50, i % 50 * 400.0, "LOW"));

    assertThat(jobs(Role.LEAD)).hasSize(5000);
  }

  private List<NextJob> jobs(Role role) {
    return new Ranking(parts, pieces, part -> "Lay out and cut")
        .jobs(Hands.of(role.permissions()::contains));
  }

  private void part(String number, String frame, double atMm, String risk) {
    parts.add(line(number, frame, atMm, risk, null));
  }

  /** Both hands of a part share a block set: its number without the hand. */
  private PartLine line(
      String number, String frame, double atMm, @Nullable String risk, @Nullable String problem) {
    String mode = risk == null ? null : "SPLIT";
    String blocks = number.replaceAll("[LR]$", "");
    Written at = new Written(Long.toString(Math.round(atMm)));
    return new PartLine(parts.size() + 1, number, frame, at, blocks, risk, mode, problem);
  }

  private void held(String part, int number) {
    piece(part, number, PieceState.IN_WORK, 3, "Edges deburred", StageKind.EDGE, true, true);
  }

  private void inWork(String part, int number, int done) {
    String stage = "First flange in passes";
    piece(part, number, PieceState.IN_WORK, done, stage, StageKind.FORM_SHRINK, false, false);
  }

  private void scrapped(String part, int number) {
    piece(part, number, PieceState.SCRAPPED, 5, null, null, false, false);
  }

  private void accepted(String part, int number) {
    piece(part, number, PieceState.ACCEPTED, 11, null, null, false, false);
  }

  private void piece(
      String part,
      int number,
      PieceState state,
      int done,
      @Nullable String stage,
      @Nullable StageKind kind,
      boolean begun,
      boolean held) {
    long partId =
        parts.stream().filter(p -> p.partNumber().equals(part)).findFirst().orElseThrow().id();
    pieces.add(
        new PieceLine(
            pieces.size() + 1, partId, number, state, done, 11, stage, kind, begun, held));
  }
}
