package dev.flangewright.bench;

import static dev.flangewright.bench.APart.because;
import static dev.flangewright.bench.APart.by;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.flangewright.bench.StageRefusal.Rule;
import dev.flangewright.people.Refused;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A stage that asks for a number and for a yes before it can be finished. */
class StageChecksTest {

  private static final String CUT = "lay-out-and-cut";
  private static final String LENGTH = "length-of-the-blank";
  private static final String GRAIN = "grain-marked";

  private final Route route = APart.draft();
  private Piece piece = APart.piece();

  @BeforeEach
  void theFirstStageIsBegun() {
    RouteStage first = route.stages().get(0);
    first.ask(new CheckCard("Length of the blank", CheckKind.NUMBER, "mm", 412.0, 411.5, 412.5));
    first.ask(CheckCard.yes("Grain marked"));
    piece = new Piece(APart.withFlanges(2), 1, route, "ann", APart.NOON);
    piece.start(CUT, by("ann"));
  }

  @Test
  void a_stage_is_not_finished_until_every_check_is_answered() {
    piece.answer(CUT, LENGTH, Answer.of(412.1), by("ann"));

    StageRefusal refusal = refused(() -> piece.finish(CUT, 1.0, by("ann")));
    assertThat(refusal.rule()).isEqualTo(Rule.CHECKS_NOT_ANSWERED);
    assertThat(refusal).hasMessageContaining("Grain marked").hasMessageNotContaining("Length");

    piece.answer(CUT, GRAIN, Answer.of(true), by("ben"));
    piece.finish(CUT, 1.0, by("ann"));
    assertThat(piece.stagesDone()).isEqualTo(1);
  }

  @Test
  void an_answer_is_kept_with_who_and_when_and_stands_in_the_log() {
    piece.answer(CUT, LENGTH, Answer.of(412.1), by("ben"));

    PieceCheck check = piece.stage(CUT).checks().get(0);
    assertThat(check.answer()).isEqualTo(Answer.of(412.1));
    assertThat(check.answeredBy()).isEqualTo("ben");
    assertThat(check.answeredAt()).isEqualTo(APart.NOON);
    StageEntry entry = piece.log().get(1);
    assertThat(entry.action()).isEqualTo(EntryAction.ANSWER);
    assertThat(entry.said()).isEqualTo("Length of the blank: 412.1 mm");
  }

  @Test
  void
      a_number_out_of_tolerance_is_recorded_and_holds_the_stage_until_it_is_let_pass_with_a_note() {
    piece.answer(CUT, LENGTH, Answer.of(410.0), by("ann"));
    piece.answer(CUT, GRAIN, Answer.of(true), by("ann"));

    StageRefusal refusal = refused(() -> piece.finish(CUT, 1.0, by("ann")));
    assertThat(refusal.rule()).isEqualTo(Rule.CHECK_FAILED);
    assertThat(refusal)
        .hasMessageContaining("410 mm (wanted: 412 mm, 411.5 to 412.5 mm)")
        .hasMessageContaining("an inspector or the lead");
    assertThat(piece.held()).isTrue();
    assertThatThrownBy(() -> piece.letPass(CUT, LENGTH, by("ivo")))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("note is missing");

    piece.letPass(CUT, LENGTH, new Signature("ivo", APart.NOON, "2 mm of surplus, trimmed later"));

    assertThat(piece.held()).isFalse();
    assertThat(piece.stage(CUT).checks().get(0).passedBy()).isEqualTo("ivo");
    piece.finish(CUT, 1.0, by("ann"));
    assertThat(piece.stagesDone()).isEqualTo(1);
  }

  @Test
  void a_no_holds_the_stage_until_it_is_put_right_and_answered_again() {
    piece.answer(CUT, LENGTH, Answer.of(412), by("ann"));
    piece.answer(CUT, GRAIN, Answer.of(false), by("ann"));
    assertThat(piece.held()).isTrue();

    piece.answer(CUT, GRAIN, Answer.of(true), by("ann"));

    assertThat(piece.held()).isFalse();
    piece.finish(CUT, 1.0, by("ann"));
    assertThat(piece.log())
        .filteredOn(entry -> GRAIN.equals(entry.checkCode()))
        .extracting(StageEntry::said)
        .containsExactly("Grain marked: no (wanted: yes)", "Grain marked: yes");
  }

  @Test
  void only_what_stands_in_the_way_is_let_pass() {
    piece.answer(CUT, LENGTH, Answer.of(412), by("ann"));

    assertThat(refused(() -> piece.letPass(CUT, LENGTH, because("so"))).rule())
        .isEqualTo(Rule.NOTHING_TO_PASS);
    assertThat(refused(() -> piece.letPass(CUT, GRAIN, because("so"))).rule())
        .isEqualTo(Rule.NOTHING_TO_PASS);
  }

  @Test
  void a_new_answer_is_not_covered_by_an_old_pass() {
    piece.answer(CUT, LENGTH, Answer.of(410), by("ann"));
    piece.letPass(CUT, LENGTH, because("surplus"));
    piece.answer(CUT, LENGTH, Answer.of(405), by("ann"));

    assertThat(piece.held()).isTrue();
  }

  @Test
  void a_check_is_answered_as_it_asks_on_a_stage_that_is_begun() {
    assertThatThrownBy(() -> piece.answer(CUT, LENGTH, Answer.of(true), by("ann")))
        .hasMessageContaining("has to be a number");
    assertThatThrownBy(() -> piece.answer(CUT, GRAIN, Answer.of(1), by("ann")))
        .hasMessageContaining("yes or no");
    StageRefusal unknown = refused(() -> piece.answer(CUT, "weight", Answer.of(1), by("ann")));
    assertThat(unknown.kind()).isEqualTo(Refused.Kind.UNKNOWN);
    Piece notBegun = new Piece(APart.withFlanges(2), 1, route, "ann", APart.NOON);
    assertThat(refused(() -> notBegun.answer(CUT, GRAIN, Answer.of(true), by("ann"))).rule())
        .isEqualTo(Rule.NOT_STARTED);
    assertThat(piece.log()).hasSize(1);
  }

  @Test
  void answers_and_passes_are_taken_back_like_other_entries() {
    piece.answer(CUT, LENGTH, Answer.of(410), by("ann"));
    piece.letPass(CUT, LENGTH, because("surplus"));

    piece.undo(because("wrong piece"));
    assertThat(piece.held()).isTrue();
    piece.undo(because("misread"));

    assertThat(piece.held()).isFalse();
    assertThat(piece.stage(CUT).checks().get(0).isAnswered()).isFalse();
    assertThat(piece.log()).hasSize(5);
  }

  @Test
  void rework_asks_for_the_checks_again_and_the_log_keeps_the_old_answers() {
    piece.answer(CUT, LENGTH, Answer.of(412), by("ann"));
    piece.answer(CUT, GRAIN, Answer.of(true), by("ann"));
    piece.finish(CUT, 1.0, by("ann"));

    piece.rework(CUT, because("bent in storage"));

    assertThat(piece.stage(CUT).checks()).noneMatch(PieceCheck::isAnswered);
    assertThat(piece.log()).extracting(StageEntry::said).contains("Length of the blank: 412 mm");
  }

  @Test
  void a_later_version_of_the_route_leaves_the_checks_of_a_piece_alone() {
    route.stages().get(0).checks().get(0).reads(CheckCard.yes("Length tried against the template"));

    assertThat(piece.stage(CUT).checks().get(0).card().question()).isEqualTo("Length of the blank");
    assertThat(piece.route()).isSameAs(route);
  }

  private static StageRefusal refused(ThrowingCallable act) {
    StageRefusal refusal = catchThrowableOfType(StageRefusal.class, act);
    assertThat(refusal).as("a refusal").isNotNull();
    return refusal;
  }
}
