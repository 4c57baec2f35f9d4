package dev.flangewright.bench;

import static dev.flangewright.forming.FlangeKind.MIXED;
import static dev.flangewright.forming.FlangeKind.PLAIN;
import static dev.flangewright.forming.FlangeKind.SHRINK;
import static dev.flangewright.forming.FlangeKind.STRETCH;
import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.forming.FlangeKind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartNatureTest {

  @Test
  void flanges_decide_what_a_part_goes_through() {
    assertThat(of()).isEqualTo(PartNature.PLAIN);
    assertThat(of(PLAIN, PLAIN)).isEqualTo(PartNature.PLAIN);
    assertThat(of(SHRINK)).isEqualTo(PartNature.SHRINK_FLANGE);
    assertThat(of(STRETCH)).isEqualTo(PartNature.STRETCH_FLANGE);
    assertThat(of(MIXED)).isEqualTo(PartNature.STRETCH_FLANGE);
    assertThat(of(SHRINK, STRETCH)).isEqualTo(PartNature.TWO_FLANGES);
    assertThat(of(SHRINK, PLAIN)).isEqualTo(PartNature.TWO_FLANGES);
  }

  /** What the digits of a temper say: ANSI H35.1, from memory. */
  @ParameterizedTest
  @CsvSource({
    "T42,true",
    "T62,true",
    "t62,true",
    "W,true",
    "T4,false",
    "T3,false",
    "T6,false",
    "O,false",
    "H32,false",
    "T361,false",
    "'',false"
  })
  void a_temper_that_only_the_user_of_the_sheet_makes_asks_for_heat_treatment(
      String temper, boolean treated) {
    assertThat(PartNature.of(temper, List.of(SHRINK)) == PartNature.HEAT_TREATED)
        .isEqualTo(treated);
  }

  private static PartNature of(FlangeKind... flanges) {
    return PartNature.of("O", List.of(flanges));
  }
}
