package dev.flangewright.bench;

import static dev.flangewright.bench.APart.because;
import static dev.flangewright.bench.APart.by;
import static dev.flangewright.bench.APart.piece;
import static dev.flangewright.bench.APart.pieceAt;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.springframework.test.util.ReflectionTestUtils.setField;

import dev.flangewright.bench.StageRefusal.Rule;
import dev.flangewright.people.Refused;
import java.util.List;
import java.util.function.Consumer;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PieceTest {

  @Test
  void a_part_with_one_flange_goes_through_no_second_flange() {
    Piece oneFlange = new Piece(APart.withFlanges(1), 1, APart.route(), "ann", APart.NOON);

    assertThat(oneFlange.stages())
        .extracting(PieceStage::code)
        .contains("first-flange", "trim-to-working-width")
        .doesNotContain("second-flange");
    assertThat(oneFlange.stagesTotal()).isEqualTo(10);
  }

  @Test
  void a_stage_cannot_be_started_before_the_ones_before_it_are_finished() {
    StageRefusal refusal = refused(() -> piece().start("cutouts", by("ann")));

    assertThat(refusal.rule()).isEqualTo(Rule.EARLIER_STAGE_OPEN);
    assertThat(refusal.kind()).isEqualTo(Refused.Kind.CONFLICT);
    assertThat(refusal).hasMessageContaining("Cutouts").hasMessageContaining("Lay out and cut");
  }

  @Test
  void a_stage_must_be_started_before_it_is_finished() {
    assertThat(refused(() -> piece().finish("lay-out-and-cut", 1.0, by("ann"))).rule())
        .isEqualTo(Rule.NOT_STARTED);
  }

  @Test
  void a_stage_started_by_one_is_not_started_again_by_another() {
    Piece piece = piece();
    piece.start("lay-out-and-cut", by("ann"));

    StageRefusal refusal = refused(() -> piece.start("lay-out-and-cut", by("ben")));

    assertThat(refusal.rule()).isEqualTo(Rule.ALREADY_STARTED);
    assertThat(refusal).hasMessageContaining("ann");
  }

  @Test
  void a_finished_stage_is_not_finished_again() {
    Piece piece = pieceAt("tooling-holes");

    assertThat(refused(() -> piece.finish("lay-out-and-cut", 1.0, by("ben"))).rule())
        .isEqualTo(Rule.ALREADY_FINISHED);
  }

  @Test
  void a_stage_that_the_piece_does_not_have_is_unknown() {
    StageRefusal refusal = refused(() -> piece().start("anodise", by("ann")));

    assertThat(refusal.rule()).isEqualTo(Rule.NO_SUCH_STAGE);
    assertThat(refusal.kind()).isEqualTo(Refused.Kind.UNKNOWN);
  }

  @Test
  void a_hold_point_is_not_passed_unchecked_and_says_what_is_missing_and_who_can_clear_it() {
    Piece piece = pieceAt("edges");
    piece.start("edges", by("ann"));

    StageRefusal refusal = refused(() -> piece.finish("edges", 1.0, by("ann")));

    assertThat(piece.held()).isTrue();
    assertThat(refusal.rule()).isEqualTo(Rule.HOLD_NOT_CHECKED);
    assertThat(refusal)
        .hasMessageContaining(RouteTemplates.EDGE_CHECK)
        .hasMessageContaining("inspector or the lead");
    assertThat(refused(() -> piece.start("first-flange", by("ann"))).rule())
        .isEqualTo(Rule.EARLIER_STAGE_OPEN);
  }

  @Test
  void a_hold_point_is_passed_once_it_is_checked() {
    Piece piece = pieceAt("edges");
    piece.start("edges", by("ann"));
    piece.check("edges", by("ivo"));
    piece.finish("edges", 1.0, by("ann"));

    assertThat(piece.held()).isFalse();
    assertThat(piece.currentStageCode()).isEqualTo("first-flange");
    assertThat(piece.stage("edges").checkedBy()).isEqualTo("ivo");
  }

  @Test
  void a_check_is_done_on_a_stage_that_is_begun_and_holds_and_once_only() {
    Piece piece = pieceAt("edges");
    assertThat(refused(() -> piece.check("edges", by("ivo"))).rule()).isEqualTo(Rule.NOT_STARTED);

    piece.start("edges", by("ann"));
    piece.check("edges", by("ivo"));

    assertThat(refused(() -> piece.check("edges", by("ivo"))).rule())
        .isEqualTo(Rule.ALREADY_CHECKED);
    assertThat(refused(() -> piece().check("lay-out-and-cut", by("ivo"))).rule())
        .isEqualTo(Rule.NO_HOLD_POINT);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 1000.1, Double.NaN, Double.POSITIVE_INFINITY})
  void hours_outside_0_to_1000_are_refused_and_nothing_is_logged(double hours) {
    Piece piece = piece();
    piece.start("lay-out-and-cut", by("ann"));

    assertThatThrownBy(() -> piece.finish("lay-out-and-cut", hours, by("ann")))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("hours")
        .hasMessageContaining("0 to 1000");
    assertThat(piece.log()).hasSize(1);
    assertThat(piece.stage("lay-out-and-cut").isFinished()).isFalse();
  }

  @Test
  void hours_may_be_nought_or_not_known() {
    Piece piece = piece();
    piece.start("lay-out-and-cut", by("ann"));
    piece.finish("lay-out-and-cut", 0.0, by("ann"));
    piece.start("tooling-holes", by("ann"));
    piece.finish("tooling-holes", null, by("ann"));

    assertThat(piece.stagesDone()).isEqualTo(2);
    assertThat(piece.hoursSpent()).isZero();
  }

  @Test
  void taking_back_a_finish_opens_the_stage_again_and_keeps_both_lines() {
    Piece piece = pieceAt("tooling-holes");

    piece.undo(because("wrong blank"));

    assertThat(piece.currentStageCode()).isEqualTo("lay-out-and-cut");
    assertThat(piece.currentStageBegun()).isTrue();
    assertThat(piece.hoursSpent()).isZero();
    assertThat(piece.log())
        .extracting(StageEntry::action)
        .containsExactly(EntryAction.START, EntryAction.FINISH, EntryAction.UNDO);
    assertThat(piece.log()).extracting(StageEntry::undone).containsExactly(false, true, false);
    assertThat(piece.log().get(2).note()).isEqualTo("wrong blank");
  }

  @Test
  void entries_are_taken_back_one_by_one_to_the_first() {
    Piece piece = pieceAt("edges");
    piece.start("edges", by("ann"));
    piece.check("edges", by("ivo"));

    piece.undo(because("looked at the wrong piece"));
    assertThat(piece.held()).isTrue();
    piece.undo(because("not begun"));
    assertThat(piece.stage("edges").isStarted()).isFalse();
    while (piece.undoable().isPresent()) {
      piece.undo(because("all of it"));
    }

    assertThat(piece.stagesDone()).isZero();
    assertThat(refused(() -> piece.undo(because("more"))).rule()).isEqualTo(Rule.NOTHING_TO_UNDO);
  }

  @Test
  void nothing_is_taken_back_without_a_reason() {
    Piece piece = pieceAt("tooling-holes");

    assertThatThrownBy(() -> piece.undo(because("  ")))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("reason");
    assertThat(piece.stagesDone()).isEqualTo(1);
  }

  @Test
  void what_an_inspection_decided_is_not_taken_back() {
    Piece piece = pieceAt("inspect");
    piece.rework("final-trim", because("edge left rough"));

    StageRefusal refusal = refused(() -> piece.undo(because("changed my mind")));

    assertThat(refusal.rule()).isEqualTo(Rule.NOTHING_TO_UNDO);
    assertThat(refusal).hasMessageContaining("inspection");
    assertThat(piece.undoable()).isEmpty();
  }

  @Test
  void rework_resets_the_stage_and_all_later_ones_and_keeps_the_hours_in_the_log() {
    Piece piece = pieceAt("set-to-template");

    piece.rework("edges", because("nick at station 4"));

    assertThat(piece.stage("cutouts").isFinished()).isTrue();
    assertThat(piece.stages().subList(3, 11)).noneMatch(PieceStage::isStarted);
    assertThat(piece.stage("edges").checkedAt()).isNull();
    assertThat(piece.currentStageCode()).isEqualTo("edges");
    assertThat(piece.stagesDone()).isEqualTo(3);
    assertThat(piece.hoursSpent()).isEqualTo(7);
  }

  @Test
  void only_a_finished_stage_is_sent_back() {
    assertThat(refused(() -> pieceAt("cutouts").rework("edges", because("rough"))).rule())
        .isEqualTo(Rule.NOTHING_TO_REWORK);
  }

  @Test
  void a_piece_is_passed_only_when_every_stage_before_the_inspection_is_finished() {
    StageRefusal refusal = refused(() -> pieceAt("final-trim").pass(false, by("ivo")));

    assertThat(refusal.rule()).isEqualTo(Rule.EARLIER_STAGE_OPEN);
    assertThat(refusal).hasMessageContaining("Final trim");
  }

  @Test
  void the_inspection_is_not_passed_by_a_log_entry() {
    Piece piece = pieceAt("inspect");
    piece.start("inspect", by("ivo"));

    assertThat(refused(() -> piece.finish("inspect", 1.0, by("ivo"))).rule())
        .isEqualTo(Rule.NEEDS_INSPECTION);
  }

  @Test
  void passing_finishes_the_last_two_stages() {
    Piece piece = pieceAt("inspect");

    piece.pass(true, because("0.3 mm under width at station 9, allowed by the design office"));

    assertThat(piece.state()).isEqualTo(PieceState.CONCESSION);
    assertThat(piece.stagesDone()).isEqualTo(piece.stagesTotal());
    assertThat(piece.currentStageCode()).isNull();
  }

  @Test
  void a_piece_that_is_done_refuses_everything() {
    Piece scrapped = pieceAt("first-flange");
    scrapped.scrap("first-flange", because("split"));
    Piece accepted = pieceAt("inspect");
    accepted.pass(false, by("ivo"));

    List<Consumer<Piece>> verbs =
        List.of(
            piece -> piece.start("first-flange", by("ann")),
            piece -> piece.check("edges", by("ivo")),
            piece -> piece.finish("first-flange", 1.0, by("ann")),
            piece -> piece.undo(because("so")),
            piece -> piece.pass(false, by("ivo")),
            piece -> piece.rework("edges", because("so")),
            piece -> piece.scrap("edges", because("so")));

    for (Consumer<Piece> verb : verbs) {
      assertThat(refused(() -> verb.accept(scrapped)).rule()).isEqualTo(Rule.PIECE_IS_DONE);
      assertThat(refused(() -> verb.accept(accepted)).rule()).isEqualTo(Rule.PIECE_IS_DONE);
    }
    assertThat(scrapped.undoable()).isEmpty();
    assertThat(scrapped.held()).isFalse();
  }

  @Test
  void who_logs_on_an_old_page_is_told_what_happened_in_the_meantime() {
    Piece piece = pieceAt("tooling-holes");
    piece.start("tooling-holes", by("ben"));
    setField(piece, "version", 3L);

    piece.refuseIfStale(3L);
    piece.refuseIfStale(null);
    StageRefusal refusal = refused(() -> piece.refuseIfStale(1L));

    assertThat(refusal.rule()).isEqualTo(Rule.SEEN_STALE);
    assertThat(refusal)
        .hasMessageContaining(
            "ann finished \"Lay out and cut\", then ben started \"Tooling holes\"");
  }

  @Test
  void a_note_has_at_most_2000_characters() {
    assertThat(because("x".repeat(2000)).note()).hasSize(2000);
    assertThatThrownBy(() -> because("x".repeat(2001)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("2000");
  }

  private static StageRefusal refused(ThrowingCallable act) {
    StageRefusal refusal = catchThrowableOfType(StageRefusal.class, act);
    assertThat(refusal).as("a refusal").isNotNull();
    return refusal;
  }
}
