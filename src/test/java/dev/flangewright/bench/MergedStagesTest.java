package dev.flangewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MergedStagesTest {

  @Test
  void a_stage_of_one_route_alone_stands_behind_the_stage_that_it_follows_there() {
    MergedStages merged = new MergedStages();
    merged.add(route(PartNature.TWO_FLANGES).stages(), 40);
    merged.add(route(PartNature.HEAT_TREATED).stages(), 20);
    merged.add(route(PartNature.PLAIN).stages(), 2);

    assertThat(merged.stages())
        .extracting(StageShare::code)
        .containsExactly(
            "lay-out-and-cut",
            "tooling-holes",
            "cutouts",
            "edges",
            "bend",
            "first-flange",
            "trim-to-working-width",
            "second-flange",
            "heat-treat",
            "set-to-template",
            "final-trim",
            "protect",
            "inspect",
            "accepted");
    assertThat(merged.stages())
        .filteredOn(stage -> stage.code().equals("second-flange"))
        .extracting(StageShare::parts)
        .containsExactly(60);
  }

  private static Route route(PartNature nature) {
    return RouteTemplates.route(nature, 1, "ann", APart.NOON);
  }
}
