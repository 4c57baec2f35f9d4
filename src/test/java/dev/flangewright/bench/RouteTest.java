package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.test.util.ReflectionTestUtils.setField;

import dev.flangewright.people.Refused;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RouteTest {

  private final Route route = stored(DefaultRoute.forBuild(1));

  @Test
  void a_new_stage_stands_last_before_the_inspection() {
    route.add(plan("Anodise", StageKind.SET, null));

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
    assertThat(route.add(plan("成形", StageKind.FORM, null)).code()).isEqualTo("stage");
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
    for (Runnable change :
        List.<Runnable>of(
            () -> stored(DefaultRoute.forBuild(1)).move(9, 1),
            () -> stored(DefaultRoute.forBuild(1)).move(11, -1),
            () -> stored(DefaultRoute.forBuild(1)).remove(10),
            () -> stored(DefaultRoute.forBuild(1)).remove(11),
            () -> stored(DefaultRoute.forBuild(1)).add(plan("Again", StageKind.INSPECT, null)),
            () -> stored(DefaultRoute.forBuild(1)).add(plan("Again", StageKind.ACCEPT, null)),
            () -> stored(DefaultRoute.forBuild(1)).change(2, plan("Look", StageKind.INSPECT, null)),
            () -> stored(DefaultRoute.forBuild(1)).change(10, plan("Set", StageKind.SET, null)))) {
      assertThatThrownBy(change::run)
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
  }

  @Test
  void what_is_typed_for_a_stage_is_kept_in_bounds() {
    assertThatThrownBy(() -> plan(" ", StageKind.CUT, null)).hasMessageContaining("name");
    assertThatThrownBy(() -> plan("x".repeat(81), StageKind.CUT, null)).hasMessageContaining("80");
    assertThatThrownBy(() -> plan("Cut", StageKind.CUT, "x".repeat(301)))
        .hasMessageContaining("300");
    assertThatThrownBy(() -> new StagePlan("Cut", StageKind.CUT, null, 10))
        .hasMessageContaining("0 to 9");
    assertThat(plan("Cut", StageKind.CUT, "  ").holdCheck()).isNull();
  }

  @Test
  void the_seal_tells_one_state_of_the_route_from_another() {
    String before = route.seal();
    setField(route.stages().get(0), "version", 1L);

    assertThat(route.seal()).isNotEqualTo(before);
  }

  private static StagePlan plan(String name, StageKind kind, @Nullable String holdCheck) {
    return new StagePlan(name, kind, holdCheck, 0);
  }

  /** As read from the database: the stages have identities 1, 2, … in their order. */
  private static Route stored(List<RouteStage> stages) {
    stages.forEach(stage -> setField(stage, "id", (long) stage.seq()));
    return new Route(1, stages);
  }
}
