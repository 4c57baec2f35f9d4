package dev.flangewright.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.forming.EdgeCondition;
import dev.flangewright.forming.ShopValue;
import dev.flangewright.materials.Metal;
import dev.flangewright.materials.ShopValues;
import dev.flangewright.materials.Sourced;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the bench says of the ground under a split limit; its values are invented. */
class SplitGroundTest {

  private static final Metal METAL =
      new Metal(
          "2024",
          "O",
          1.2,
          null,
          null,
          null,
          null,
          new Sourced(12, "a standard", "memory"),
          null,
          null,
          null);

  @Test
  void the_elongation_and_the_defaults_are_named_with_their_standing() {
    SplitGround ground = SplitGround.of(Optional.of(METAL), ShopValues.DEFAULT);
    assertThat(ground.words())
        .isEqualTo(
            "Elongation 12.0 %: a standard; from memory: check before relying on it."
                + " Edge factors: shop default, no source.");
    assertThat(ground.factor(EdgeCondition.POLISHED)).isEqualTo(0.9);
  }

  @Test
  void an_edge_factor_of_the_builds_own_is_used_and_named() {
    Sourced own = new Sourced(0.8, "trial 4, entered by lead on 3 May 2026", "own value");
    SplitGround ground =
        SplitGround.of(Optional.empty(), new ShopValues(Map.of(ShopValue.POLISHED_EDGE, own)));
    assertThat(ground.factor(EdgeCondition.POLISHED)).isEqualTo(0.8);
    assertThat(ground.factor(EdgeCondition.FILED)).isEqualTo(0.65);
    assertThat(ground.words())
        .startsWith("Elongation not known.")
        .contains("polished, trial 4, entered by lead on 3 May 2026")
        .contains("burred, shop default, no source");
  }
}
