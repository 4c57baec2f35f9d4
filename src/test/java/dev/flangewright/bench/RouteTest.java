package dev.flangewright.bench;

import static dev.flangewright.bench.APart.by;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.test.util.ReflectionTestUtils.setField;

import dev.flangewright.people.Refused;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RouteTest {

  private final Route route = APart.draft();

  @ParameterizedTest
  @EnumSource(PartNature.class)
  void every_shipped_route_is_sound_and_released(PartNature nature) {
    Route shipped = RouteTemplates.route(nature, 1, "ann", APart.NOON);

    assertThat(shipped.state()).isEqualTo(RouteState.RELEASED);
    assertThat(shipped.number()).isEqualTo(1);
    assertThat(shipped.stages())
        .extracting(RouteStage::code)
        .contains("edges")
        .doesNotHaveDuplicates();
    assertThat(shipped.stages())
        .extracting(RouteStage::kind)
        .endsWith(StageKind.INSPECT, StageKind.ACCEPT);
  }

  @Test
  void a_released_route_does_not_change_any_more() {
    Route released = APart.route();
    released.stages().forEach(stage -> setField(stage, "id", (long) stage.seq()));

    for (Consumer<Route> change :
        List.<Consumer<Route>>of(
            one -> one.add(plan("Anodise", StageKind.PROTECT, null)),
            one -> one.change(1, plan("Cut by router", StageKind.CUT, null)),
            one -> one.move(2, 1),
            one -> one.remove(2),
            one -> one.stageToChange(1),
            Route::release)) {
      assertThatThrownBy(() -> change.accept(released))
          .isInstanceOf(Refused.class)
          .hasMessageContaining("Two flanges, version 1 is released");
    }
    assertThat(released.stages()).hasSize(11);
  }

  @Test
  void the_next_version_begins_with_the_stages_and_checks_of_the_last_one() {
    Route first = APart.route();
    first.stages().get(0).ask(CheckCard.yes("Grain marked"));
    setField(first, "id", 7L);

    Route second = first.draft("Two flanges", 2, by("ivo"));
    second.stages().get(0).reads(plan("Cut by router", StageKind.CUT, null));

    assertThat(second.label()).isEqualTo("Two flanges, version 2");
    assertThat(second.basedOnId()).isEqualTo(7L);
    assertThat(second.stages().get(0).checks())
        .extracting(StageCheck::code)
        .containsExactly("grain-marked");
    assertThat(second.stages().get(3).holdCheck()).isEqualTo(RouteTemplates.EDGE_CHECK);
    assertThat(first.stages().get(0).name()).isEqualTo("Lay out and cut");
  }

  @Test
  void a_new_stage_stands_last_before_the_inspection() {
    route.add(plan("Anodise", StageKind.PROTECT, null));

    assertThat(route.stages())
        .extracting(RouteStage::code)
        .endsWith("final-trim", "anodise", "inspect", "accepted");
    assertThat(route.stages()).extracting(RouteStage::seq).startsWith(1, 2).endsWith(11, 12);
  }

  @Test
  void two_stages_of_one_name_get_codes_of_their_own() {
    assertThat(route.add(plan("Cutouts", StageKind.PIERCE, null)).code()).isEqualTo("cutouts-2");
    assertThat(route.add(plan("Découpe à l'œil", StageKind.CUT, null)).code())
        .isEqualTo("decoupe-a-l-il");
    assertThat(route.add(plan("成形", StageKind.FORM_STRETCH, null)).code()).isEqualTo("stage");
  }

  @Test
  void a_renamed_stage_keeps_its_code() {
    route.change(3, plan("Lightening holes", StageKind.PIERCE, "Edges of the holes smooth"));

    RouteStage third = route.stages().get(2);
    assertThat(third.code()).isEqualTo("cutouts");
    assertThat(third.name()).isEqualTo("Lightening holes");
    assertThat(third.holdCheck()).isEqualTo("Edges of the holes smooth");
  }

  @Test
  void stages_of_work_change_places() {
    route.move(3, -1);

    assertThat(route.stages())
        .extracting(RouteStage::code)
        .startsWith("lay-out-and-cut", "cutouts", "tooling-holes");
    assertThatThrownBy(() -> route.move(1, -1)).isInstanceOf(Refused.class);
  }

  @Test
  void the_inspection_stays_before_the_acceptance_and_both_at_the_end() {
    for (Consumer<Route> change :
        List.<Consumer<Route>>of(
            one -> one.move(9, 1),
            one -> one.move(11, -1),
            one -> one.remove(10),
            one -> one.remove(11),
            one -> one.add(plan("Again", StageKind.INSPECT, null)),
            one -> one.add(plan("Again", StageKind.ACCEPT, null)),
            one -> one.change(2, plan("Look", StageKind.INSPECT, null)),
            one -> one.change(10, plan("Set", StageKind.SET, null)))) {
      assertThatThrownBy(() -> change.accept(APart.draft()))
          .isInstanceOf(Refused.class)
          .hasMessageContaining("exactly one inspection");
    }
  }

  @Test
  void the_last_stage_of_work_is_not_removed() {
    for (long id = 1; id <= 8; id++) {
      route.remove(id);
    }

    assertThatThrownBy(() -> route.remove(9))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("at least one stage of work");
  }

  @Test
  void no_part_goes_without_its_inspection_and_the_inspection_holds_for_nothing_else() {
    assertThatThrownBy(() -> new StagePlan("Inspect", StageKind.INSPECT, null, 2))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> new StagePlan("Inspect", StageKind.INSPECT, "Looked at", 0))
        .isInstanceOf(Refused.class);
    assertThatThrownBy(() -> route.stages().get(9).ask(CheckCard.yes("Looked at")))
        .isInstanceOf(Refused.class);
  }

  @Test
  void what_is_typed_for_a_stage_is_kept_in_bounds() {
    assertThatThrownBy(() -> plan(" ", StageKind.CUT, null)).hasMessageContaining("name");
    assertThatThrownBy(() -> plan("x".repeat(81), StageKind.CUT, null)).hasMessageContaining("80");
    assertThatThrownBy(() -> plan("Cut", StageKind.CUT, "x".repeat(301)))
        .hasMessageContaining("300");
    assertThatThrownBy(() -> new StagePlan("Cut", StageKind.CUT, null, 10))
        .hasMessageContaining("0 to 9");
    assertThatThrownBy(() -> new StageCard("Cut", StageKind.CUT, null, null, 0, false, null, null))
        .hasMessageContaining("expectedMinutes");
    assertThat(plan("Cut", StageKind.CUT, "  ").card().holdCheck()).isNull();
  }

  @Test
  void a_change_is_refused_where_somebody_else_changed_the_draft() {
    int seen = route.changes();
    route.move(3, -1);

    assertThatThrownBy(() -> route.refuseIfStale(seen)).hasMessageContaining("Somebody changed");
    route.refuseIfStale(route.changes());
  }

  @Test
  void the_checks_of_a_stage_are_asked_moved_reworded_and_taken_away() {
    RouteStage stage = route.stageToChange(5);
    for (String question : List.of("Radius tried", "No crack", "No crack")) {
      stage.ask(CheckCard.yes(question));
    }
    stage.checks().forEach(check -> setField(check, "id", 100L + check.seq()));
    assertThat(stage.checks())
        .extracting(StageCheck::code)
        .containsExactly("radius-tried", "no-crack", "no-crack-2");

    stage.moveCheck(103, -1);
    stage.changeCheck(103, CheckCard.yes("No crack under the glass"));
    stage.removeCheck(101);

    assertThat(stage.checks())
        .extracting(StageCheck::code)
        .containsExactly("no-crack-2", "no-crack");
    assertThat(stage.checks()).extracting(StageCheck::seq).containsExactly(1, 2);
    assertThat(stage.checks().get(0).card().question()).isEqualTo("No crack under the glass");
    assertThatThrownBy(() -> stage.moveCheck(103, -1)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> stage.removeCheck(101)).isInstanceOf(Refused.class);
  }

  private static StagePlan plan(String name, StageKind kind, @Nullable String holdCheck) {
    return new StagePlan(name, kind, holdCheck, 0);
  }
}
