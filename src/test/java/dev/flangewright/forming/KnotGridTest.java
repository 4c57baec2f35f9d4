package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Broken lines over the places of a piece: their values and integrals in closed form. */
class KnotGridTest {

  @ParameterizedTest
  @CsvSource({
    // length, stations, cells, steps: 64 mm / 32 = 2 mm a cell is one step; more is more steps.
    "10, 8, 32, 1",
    "64, 8, 32, 1",
    "65, 8, 32, 2",
    "640, 99, 32, 10",
    "640, 100, 64, 5",
    "100000, 400, 64, 40",
  })
  void steps_are_of_two_millimetres_where_forty_a_cell_are_enough(
      double length, int stations, int cells, int steps) {
    var grid = KnotGrid.of(length, stations);
    assertThat(grid.cells()).isEqualTo(cells);
    assertThat(grid.steps()).isEqualTo(steps);
    assertThat(grid.places()).isEqualTo(cells + 1);
    assertThat(grid.nodes()).isEqualTo(cells * steps + 1);
    assertThat(grid.nodeMm() * (grid.nodes() - 1)).isCloseTo(length, within(1e-9 * length));
  }

  private static final KnotGrid GRID = new KnotGrid(80, 8, 5);

  /** f(s) = 3 + s/20, a straight line. */
  private static double[] line() {
    var line = new double[9];
    for (int i = 0; i < 9; i++) {
      line[i] = 3 + i * 10 / 20.0;
    }
    return line;
  }

  @Test
  void between_the_places_a_line_is_straight_and_beyond_the_ends_level() {
    for (double arc : new double[] {0, 3, 10, 44.5, 79, 80}) {
      assertThat(GRID.between(line(), arc)).isCloseTo(3 + arc / 20, within(1e-12));
    }
    assertThat(GRID.between(line(), -7)).isEqualTo(3);
    assertThat(GRID.between(line(), 95)).isEqualTo(7);
  }

  @Test
  void the_integral_of_a_straight_line_is_a_parabola() {
    for (double arc : new double[] {0, 3, 10, 25, 44.5, 79, 80}) {
      assertThat(GRID.integral(line(), arc)).isCloseTo(3 * arc + arc * arc / 40, within(1e-10));
    }
  }

  @Test
  void the_area_under_a_hat_is_half_its_base() {
    int[] knots = {0, 3, 8};
    // Bases 30, 80 and 50 mm, height 1.
    assertThat(GRID.integral(GRID.hat(knots, 0), 80)).isCloseTo(15, within(1e-12));
    assertThat(GRID.integral(GRID.hat(knots, 1), 80)).isCloseTo(40, within(1e-12));
    assertThat(GRID.integral(GRID.hat(knots, 2), 80)).isCloseTo(25, within(1e-12));
  }

  @Test
  void hats_add_up_to_one_everywhere_and_each_is_one_at_its_knot_alone() {
    int[] knots = {1, 2, 4, 7};
    var sum = new double[9];
    for (int j = 0; j < knots.length; j++) {
      double[] hat = GRID.hat(knots, j);
      for (int place = 0; place < 9; place++) {
        sum[place] += hat[place];
      }
      for (int k = 0; k < knots.length; k++) {
        assertThat(hat[knots[k]]).isEqualTo(j == k ? 1 : 0);
      }
    }
    assertThat(sum).containsOnly(new double[] {1}, within(1e-15));
    assertThat(GRID.hat(knots, 2)[3]).isCloseTo(0.5, within(1e-15));
    assertThat(GRID.hat(knots, 2)[5]).isCloseTo(2.0 / 3, within(1e-15));
    assertThat(GRID.hat(new int[] {4}, 0)).containsOnly(1);
  }

  @Test
  void knots_spread_evenly_hold_both_ends() {
    assertThat(GRID.spread(2)).containsExactly(0, 8);
    assertThat(GRID.spread(3)).containsExactly(0, 4, 8);
    assertThat(GRID.spread(5)).containsExactly(0, 2, 4, 6, 8);
  }
}
