package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Points strung on chords: their places along them, and the first curve that follows them. */
class PointChainTest {

  @Test
  void points_on_a_line_are_strung_at_their_own_distances_however_wide_the_links() {
    var line = Loft.curve(Loft.uneven(0, 100, 30), s -> new Point(3 + 0.6 * s, 0.8 * s));
    double[] at = Loft.uneven(0, 100, 30);
    for (double spacing : new double[] {0, 7, 60, 1000}) {
      var chain = PointChain.through(line, spacing);
      assertThat(chain.arcs()).containsExactly(at, within(1e-9));
      assertThat(chain.lengthMm()).isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void links_are_the_spacing_apart_and_that_far_from_the_end() {
    // A zigzag 6 mm to either side: along every point it is longer than along every second one.
    var zigzag =
        List.of(
            new Point(0, 0),
            new Point(8, 6),
            new Point(16, 0),
            new Point(24, 6),
            new Point(32, 0),
            new Point(40, 6),
            new Point(48, 0));
    // Legs of 10 mm: a point exactly as far away as the spacing is a link.
    assertThat(PointChain.through(zigzag, 10).lengthMm()).isCloseTo(60, within(1e-12));
    assertThat(PointChain.through(zigzag, 10.1).lengthMm()).isCloseTo(48, within(1e-12));
    assertThat(PointChain.through(zigzag, 16).lengthMm()).isCloseTo(48, within(1e-12));
    // Links at 0, 24 and 48 mm: the first of these chords is 24 by 6 mm, and so is the second.
    double slanting = 2 * Math.hypot(24, 6);
    assertThat(PointChain.through(zigzag, 20).lengthMm()).isCloseTo(slanting, within(1e-12));
    assertThat(PointChain.through(zigzag, 25).lengthMm()).isCloseTo(48, within(1e-12));
  }

  @Test
  void a_point_beside_its_chord_is_strung_at_its_foot_and_never_beyond_the_chord() {
    var points = List.of(new Point(0, 0), new Point(-5, 2), new Point(30, 8), new Point(40, 0));
    assertThat(PointChain.through(points, 1000).arcs())
        .containsExactly(new double[] {0, 0, 30, 40}, within(1e-12));
    var beyond = List.of(new Point(0, 0), new Point(50, 2), new Point(40, 0));
    assertThat(PointChain.through(beyond, 1000).arcs())
        .containsExactly(new double[] {0, 40, 40}, within(1e-12));
  }

  @Test
  void the_curve_through_exact_points_of_a_circle_turns_as_it_does() {
    double radius = 250;
    // More than half a turn, so that headings pass through ±180°.
    var points = Loft.circle(radius, Loft.even(0.3, 4.8, 91));
    var chain = PointChain.through(points, 0);
    var grid = KnotGrid.of(chain.lengthMm(), 91);
    var curve = chain.curve(grid, SpiralFit.hats(grid, new int[] {0, 32}), new double[0][]);
    assertThat(curve.start()).isEqualTo(points.get(0));
    // Chords are shorter than their arcs by (c/R)²/24, one part in ten thousand at 12.5 mm.
    assertThat(curve.curvaturePerMm(0)).isCloseTo(1 / radius, within(2e-4 / radius));
    assertThat(curve.curvaturePerMm(chain.lengthMm())).isCloseTo(1 / radius, within(2e-4 / radius));
    assertThat(curve.startHeading()).isCloseTo(0.3 + Math.PI / 2, within(1e-3));
  }

  @Test
  void a_penalty_on_the_curvature_straightens_the_curve() {
    var points = Loft.circle(250, Loft.even(0, 1, 21));
    var chain = PointChain.through(points, 0);
    var grid = KnotGrid.of(chain.lengthMm(), 21);
    double[][] hats = SpiralFit.hats(grid, new int[] {16});
    double[][] penalty = {{1e9 * grid.lengthMm()}};
    var stiff = chain.curve(grid, hats, penalty);
    assertThat(stiff.curvaturePerMm(100)).isCloseTo(0, within(1e-9));
    // Straight, along the mean of the chords' directions.
    assertThat(stiff.startHeading()).isCloseTo(0.5 + Math.PI / 2, within(1e-9));
    // A penalty of λ against Σ(s − s̄)² halves the curvature where both are equal: ridge
    // regression in one unknown, derived.
    double sum = 0;
    double mean = 0;
    for (int k = 0; k < 20; k++) {
      mean += (chain.arcs()[k] + chain.arcs()[k + 1]) / 2 / 20;
    }
    for (int k = 0; k < 20; k++) {
      sum += Math.pow((chain.arcs()[k] + chain.arcs()[k + 1]) / 2 - mean, 2);
    }
    var free = chain.curve(grid, hats, new double[0][]);
    var half = chain.curve(grid, hats, new double[][] {{Math.sqrt(sum) * grid.lengthMm()}});
    assertThat(half.curvaturePerMm(50)).isCloseTo(free.curvaturePerMm(50) / 2, within(1e-12));
  }
}
