package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** How a fair curve moves when it is bent, against the same curve bent a little both ways. */
class SpiralCurveTest {

  private static final KnotGrid GRID = new KnotGrid(400, 8, 25);
  private static final double LITTLE = 1e-7;

  private static SpiralCurve bent(int place, double perMm) {
    double[] curvature = {0.001, 0.002, 0.004, 0.003, 0, -0.001, -0.002, 0.001, 0.002};
    curvature[place] += perMm;
    return new SpiralCurve(GRID, new Point(10, 20), 0.3, curvature);
  }

  @Test
  void a_little_more_curvature_moves_the_points_behind_it_as_said() {
    double[] arcs = {0, 1, 40, 50, 61.3, 175, 200, 333, 399, 400};
    double[][] moves = bent(0, 0).sensitivity(arcs);
    for (int place = 0; place < GRID.places(); place++) {
      for (int i = 0; i < arcs.length; i++) {
        var there = bent(place, LITTLE).at(arcs[i]);
        var back = bent(place, -LITTLE).at(arcs[i]);
        var curve = bent(0, 0);
        double move = curve.deviation(there, arcs[i]) - curve.deviation(back, arcs[i]);
        // Between two nodes 2 mm apart the movement is read off its chord: short by h²/8 = 0.5 mm².
        assertThat(moves[i][place + 2]).isCloseTo(move / (2 * LITTLE), within(0.51));
      }
    }
  }
}
