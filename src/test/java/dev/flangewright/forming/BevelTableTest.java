package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The block's edge as the saw cuts it. */
class BevelTableTest {

  private static final Sheet SHEET = Sheet.of(1, 3);
  private static final MetalValues METAL =
      new MetalValues(18.0, 290.0, 440.0, 73_100.0, 2780.0, 2.5);

  private static FlangeFigures tapering(MetalValues metal) {
    var points = Loft.circle(500, Loft.even(0, 1, 5));
    var stations = new ArrayList<Station>();
    for (int i = 0; i < points.size(); i++) {
      var at = points.get(i);
      stations.add(new Station(10 * (i + 1), at.xMm(), at.yMm(), 80 + 5 * i, 20));
    }
    return FlangeFigures.of(Contour.of(stations), SHEET, metal, EdgeCondition.DEBURRED);
  }

  /**
   * Worked by hand from Kalpakjian and Schmid, ch. 16: x = Ri·Y/(E·t) with Ri ≈ 2.9 mm is 0.0115,
   * Ri/Rf = 1 − 0.0345 = 0.9655, so Ri = 2.8966 and θ_block/θ = 3.5/3.3966 = 1.0304.
   */
  @Test
  void the_tilt_is_what_the_block_angle_has_over_square() {
    var rows = BevelTable.of(tapering(METAL)).rows();
    assertThat(rows).extracting(BevelTable.Row::station).containsExactly(10, 20, 30, 40, 50);
    assertThat(rows.get(0).tiltDeg()).as("leans out").isCloseTo(80 * 1.0304 - 90, within(0.01));
    assertThat(rows.get(2).tiltDeg()).as("springback alone").isCloseTo(90 * 0.0304, within(0.01));
    assertThat(rows.get(4).tiltDeg()).as("leans under").isCloseTo(100 * 1.0304 - 90, within(0.01));
    assertThat(rows.get(4).arcMm()).isCloseTo(500, within(0.01));
    assertThat(rows)
        .allSatisfy(row -> assertThat(row.tiltDeg()).isEqualTo(row.blockAngleDeg() - 90));
  }

  @Test
  void without_proof_stress_there_is_no_tilt_to_tell() {
    assertThat(BevelTable.of(tapering(MetalValues.UNKNOWN)).rows())
        .allSatisfy(row -> assertThat(row.tiltDeg()).isNull());
  }

  @Test
  void a_cutout_does_not_interrupt_the_block() {
    var contour = Loft.through(Loft.circle(500, Loft.even(0, 1, 21)));
    var figures =
        FlangeFigures.of(
            contour, SHEET, METAL, EdgeCondition.DEBURRED, List.of(new Cutout(100, 200, null)));
    assertThat(BevelTable.of(figures).rows()).hasSize(21);
  }
}
