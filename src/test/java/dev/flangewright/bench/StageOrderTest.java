package dev.flangewright.bench;

import static dev.flangewright.bench.APart.because;
import static dev.flangewright.bench.APart.by;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.test.util.ReflectionTestUtils.getField;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Tooling holes, cutouts and edges may be done alongside each other; the rest in strict order. */
class StageOrderTest {

  private final Piece piece = new Piece(APart.withFlanges(2), 1, route(), "ann", APart.NOON);

  @Test
  void stages_alongside_each_other_are_open_together_once_what_is_before_them_is_finished() {
    assertThat(open()).containsExactly("lay-out-and-cut");
    assertThatThrownBy(() -> piece.start("cutouts", by("ann"))).isInstanceOf(StageRefusal.class);

    pass("lay-out-and-cut");

    assertThat(open()).containsExactly("tooling-holes", "cutouts", "edges");
    piece.start("edges", by("ann"));
    piece.start("tooling-holes", by("ben"));
    assertThat(piece.stage("edges").isStarted()).isTrue();
  }

  @Test
  void what_comes_after_them_waits_for_all_of_them() {
    pass("lay-out-and-cut");
    pass("cutouts");
    pass("edges");

    assertThatThrownBy(() -> piece.start("first-flange", by("ann")))
        .isInstanceOf(StageRefusal.class)
        .hasMessageContaining("Tooling holes");
    pass("tooling-holes");
    piece.start("first-flange", by("ann"));
    assertThat(open()).containsExactly("first-flange");
  }

  @Test
  void of_several_open_stages_the_held_one_is_shown_first_then_the_begun_one() {
    pass("lay-out-and-cut");
    assertThat(piece.currentStageCode()).isEqualTo("tooling-holes");
    piece.start("cutouts", by("ann"));
    assertThat(piece.currentStageCode()).isEqualTo("cutouts");
    piece.start("edges", by("ben"));

    assertThat(piece.currentStageCode()).isEqualTo("edges");
    assertThat(piece.held()).isTrue();
  }

  @Test
  void every_entry_changes_where_the_piece_stands_so_that_an_old_page_is_noticed() {
    pass("lay-out-and-cut");
    piece.start("edges", by("ann"));
    Standing before = standing();

    piece.start("tooling-holes", by("ben"));

    assertThat(piece.currentStageCode()).isEqualTo("edges");
    assertThat(standing()).usingRecursiveComparison().isNotEqualTo(before);
  }

  @Test
  void the_last_entry_is_taken_back_whichever_stage_it_is_of() {
    pass("lay-out-and-cut");
    piece.start("edges", by("ann"));
    piece.start("tooling-holes", by("ben"));

    piece.undo(because("wrong piece"));

    assertThat(piece.stage("tooling-holes").isStarted()).isFalse();
    assertThat(piece.stage("edges").isStarted()).isTrue();
  }

  private Standing standing() {
    return (Standing) Objects.requireNonNull(getField(piece, "standing"));
  }

  private List<String> open() {
    return piece.open().stream().map(PieceStage::code).toList();
  }

  private void pass(String code) {
    APart.pass(piece, piece.stage(code));
  }

  private static Route route() {
    Route route = APart.draft();
    for (RouteStage stage : route.stages().subList(1, 4)) {
      StageCard card = stage.card();
      stage.reads(
          new StagePlan(
              new StageCard(
                  card.name(), card.kind(), card.holdCheck(), null, null, true, null, null),
              stage.flangesNeeded()));
    }
    return route;
  }
}
