package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Knots are set where the curvature has its kinks, and straight runs where it is nothing. */
class KnotSearchTest {

  private static final double LENGTH_MM = 640;

  private static List<Point> lofted(int count, DoubleUnaryOperator curvature) {
    return Loft.withCurvature(Loft.even(0, LENGTH_MM, count), curvature);
  }

  private static SpiralFit near(List<Point> points) {
    return SpiralFit.near(points, 7);
  }

  /** Curvature from 1/500 to 1/200 at 200 mm and back to 1/500 at the end. */
  private static double kink(double s) {
    double share = s < 200 ? s / 200 : (LENGTH_MM - s) / (LENGTH_MM - 200);
    return 1.0 / 500 + (1.0 / 200 - 1.0 / 500) * share;
  }

  /** A bend of 1/250 that runs out at 200 mm, straight to 440 mm, and a bend the other way. */
  private static double reverse(double s) {
    return s < 200 ? (200 - s) / 200 / 250 : s < 440 ? 0 : -(s - 440) / 200 / 250;
  }

  @Test
  void knots_begin_with_the_circle_then_two_then_the_kink() {
    var search = new KnotSearch(near(lofted(60, KnotSearchTest::kink)));
    int[] one = search.grown(new int[0]);
    int[] two = search.grown(one);
    int[] three = search.grown(two);
    assertThat(one).containsExactly(16);
    assertThat(two).hasSize(2);
    // 200 of 640 mm is the tenth of 32 spaces.
    assertThat(three).containsExactly(0, 10, 32);
    assertThat(search.sumOfSquares(three)).isLessThan(0.01 * search.sumOfSquares(two));
    assertThat(search.sumOfSquares(two)).isLessThan(search.sumOfSquares(one));
    assertThat(search.sumOfSquares(one)).isLessThan(search.sumOfSquares(new int[0]));
  }

  @Test
  void what_a_set_of_knots_is_said_to_leave_is_what_the_fit_with_them_leaves() {
    var points = Shape.scattered(lofted(50, KnotSearchTest::kink), new Random(4), 0.3);
    var near = near(points);
    var search = new KnotSearch(near);
    var grid = near.curve().grid();
    for (int[] knots : new int[][] {{16}, {0, 32}, {0, 10, 32}, {2, 9, 20, 31}}) {
      double fitted = near.best(SpiralFit.hats(grid, knots)).sumOfSquares();
      // Linear beside a curve a few tenths of a millimetre away; the circle is 10 mm away.
      double percent = knots.length == 1 ? 5 : 1;
      assertThat(search.sumOfSquares(knots)).isCloseTo(fitted, withinPercentage(percent));
    }
  }

  @Test
  void what_a_straight_run_is_said_to_leave_is_what_the_fit_with_it_leaves() {
    var points = Shape.scattered(lofted(60, KnotSearchTest::reverse), new Random(4), 0.3);
    var near = near(points);
    var search = new KnotSearch(near);
    int[] knots = {0, 10, 22, 32};
    double[][] hats = SpiralFit.hats(near.curve().grid(), knots);
    double fitted = near.best(new double[][] {hats[0], hats[3]}).sumOfSquares();
    assertThat(search.sumOfSquares(knots, 1)).isCloseTo(fitted, withinPercentage(1));
    // 60 readings within 0.3 mm in either axis, evenly: 0.09/3 mm² each.
    assertThat(fitted).isBetween(0.6 * 60 * 0.03, 1.3 * 60 * 0.03);
  }

  @Test
  void knots_keep_their_distance_from_each_other_and_from_the_ends() {
    var search = new KnotSearch(near(lofted(50, KnotSearchTest::kink)));
    // 32 spaces: 2 apart, inner ones 5 from the ends, and not both of two near the same end.
    assertThat(search.sumOfSquares(new int[] {0, 5})).isFinite();
    assertThat(search.sumOfSquares(new int[] {0, 4})).isInfinite();
    assertThat(search.sumOfSquares(new int[] {27, 32})).isFinite();
    assertThat(search.sumOfSquares(new int[] {28, 32})).isInfinite();
    assertThat(search.sumOfSquares(new int[] {0, 10, 12, 32})).isFinite();
    assertThat(search.sumOfSquares(new int[] {0, 5, 32})).isFinite();
    assertThat(search.sumOfSquares(new int[] {0, 4, 32})).isInfinite();
    assertThat(search.sumOfSquares(new int[] {0, 27, 32})).isFinite();
    assertThat(search.sumOfSquares(new int[] {0, 28, 32})).isInfinite();
    assertThat(search.sumOfSquares(new int[] {0, 10, 11, 32})).isInfinite();
    assertThat(search.sumOfSquares(new int[] {0, 10, 11, 32}, 1)).isInfinite();
    assertThat(search.sumOfSquares(new int[] {0, 10, 12, 32}, 1)).isFinite();
  }

  @Test
  void knots_grow_by_one_as_long_as_there_is_room() {
    var points = Shape.scattered(lofted(60, s -> 1.0 / 400), new Random(9), 0.3);
    var search = new KnotSearch(near(points));
    int[] knots = {};
    double before = Double.POSITIVE_INFINITY;
    for (int count = 1; count < 9; count++) {
      knots = search.grown(knots);
      assertThat(knots).hasSize(count).isSorted().doesNotHaveDuplicates();
      assertThat(search.sumOfSquares(knots)).isFinite().isLessThan(before);
      before = search.sumOfSquares(knots);
    }
    // Two apart from 5 to 27 there is room for 12 beside the ends.
    for (int count = 9; count < 20; count++) {
      knots = search.grown(knots);
    }
    assertThat(search.grown(knots)).isEqualTo(knots);
    assertThat(knots).hasSizeBetween(10, 14);
  }

  @Test
  void no_single_knot_elsewhere_would_serve_better_by_more_than_scatter() {
    var points = Shape.scattered(lofted(60, KnotSearchTest::kink), new Random(12), 0.3);
    var search = new KnotSearch(near(points));
    int[] knots = search.grown(search.grown(search.grown(search.grown(new int[0]))));
    assertThat(knots).hasSize(4);
    double least = search.sumOfSquares(knots);
    for (int j = 0; j < 4; j++) {
      for (int place = 0; place <= 32; place++) {
        int[] other = knots.clone();
        other[j] = place;
        Arrays.sort(other);
        if (Arrays.stream(other).distinct().count() == 4) {
          assertThat(search.sumOfSquares(other)).isGreaterThanOrEqualTo(60.0 / 64 * least);
        }
      }
    }
  }

  @Test
  void a_straight_run_is_laid_between_the_knots_where_the_curvature_is_nothing() {
    var search = new KnotSearch(near(lofted(60, KnotSearchTest::reverse)));
    var run = search.straightRun(new int[] {0, 32});
    assertThat(run).isNotNull();
    // 200 and 440 of 640 mm are the 10th and the 22nd of 32 spaces.
    assertThat(run.knots()).containsExactly(0, 10, 22, 32);
    assertThat(run.first()).isEqualTo(1);
    assertThat(run.sumOfSquares()).isCloseTo(0, within(1e-3));
    assertThat(run.sumOfSquares()).isEqualTo(search.sumOfSquares(run.knots(), 1));
  }

  @Test
  void a_straight_run_at_an_end_is_found_among_more_knots() {
    var points =
        lofted(
            60,
            s ->
                s < 240 ? (240 - s) / 240 / 250 : s < 440 ? 0 : Math.min(1, (s - 440) / 100) / 300);
    var search = new KnotSearch(near(points));
    var run = search.straightRun(new int[] {0, 27, 32});
    assertThat(run).isNotNull();
    // Level from the 27th place on, wherever the last knot stands.
    assertThat(Arrays.copyOf(run.knots(), 4)).containsExactly(0, 12, 22, 27);
    assertThat(run.first()).isEqualTo(1);
    assertThat(search.straightRun(new int[] {16})).isNull();
    assertThat(search.straightRun(new int[0])).isNull();
  }

  @Test
  void a_bend_without_a_straight_run_gets_none() {
    var search = new KnotSearch(near(lofted(60, KnotSearchTest::kink)));
    assertThat(search.straightRun(new int[] {0, 10, 32})).isNull();
  }

  @Test
  void between_knots_too_close_there_is_no_room_for_a_straight_run() {
    var search = new KnotSearch(near(lofted(60, KnotSearchTest::kink)));
    var run = StraightRun.between(search, 33, new int[] {0, 2});
    assertThat(run.first()).isEqualTo(-1);
    assertThat(run.knots()).containsExactly(0, 2);
    assertThat(run.sumOfSquares()).isInfinite();
  }

  @Test
  void a_line_left_of_itself_in_the_mirror_has_its_knots_mirrored() {
    var points = lofted(60, KnotSearchTest::kink);
    var knots = new ArrayList<int[]>();
    for (var hand : List.of(points, Loft.mirrored(points))) {
      var search = new KnotSearch(near(hand));
      knots.add(search.grown(search.grown(search.grown(new int[0]))));
    }
    for (int j = 0; j < 3; j++) {
      assertThat(knots.get(1)[2 - j]).isEqualTo(32 - knots.get(0)[j]);
    }
  }

  @Test
  void a_knot_that_serves_nothing_is_moved_to_where_it_serves() {
    // Kinks at 160 and 480 mm, the 8th and the 24th place; a knot stands uselessly between them.
    var points =
        lofted(
            60,
            s ->
                s < 160
                    ? 1.0 / 600 + s / 160 / 300
                    : s < 480
                        ? 1.0 / 200 - (s - 160) / 320 / 300
                        : 1.0 / 600 + (s - 480) / 160 / 400);
    var search = new KnotSearch(near(points));
    assertThat(search.grown(new int[] {0, 16, 32})).containsExactly(0, 8, 24, 32);
    assertThat(search.grown(new int[] {0, 10, 21, 32})).contains(0, 8, 24, 32);
  }

  @Test
  void a_straight_run_settles_where_no_knot_would_serve_better_between_its_neighbours() {
    int[][] starts = {{0, 14, 32}, {0, 18, 32}, {0, 6, 32}, {5, 32}, {0, 27}};
    var exact = lofted(60, KnotSearchTest::reverse);
    for (var points : List.of(exact, Shape.scattered(exact, new Random(8), 0.3))) {
      var search = new KnotSearch(near(points));
      for (int[] start : starts) {
        var run = StraightRun.between(search, 33, start);
        assertThat(run.knots()).hasSize(start.length + 2).isSorted();
        assertThat(run.first()).isPositive();
        assertThat(run.sumOfSquares()).isEqualTo(search.sumOfSquares(run.knots(), run.first()));
        for (int j = 0; j < run.knots().length; j++) {
          for (int place = 0; place <= 32; place++) {
            int[] other = run.knots().clone();
            other[j] = place;
            assertThat(search.sumOfSquares(other, run.first()))
                .isGreaterThanOrEqualTo(run.sumOfSquares());
          }
        }
      }
    }
  }

  @Test
  void a_straight_run_is_found_in_any_gap_between_the_knots() {
    // The straight run seen from either end: between the first knots, and between the last.
    var points =
        lofted(
            60,
            s ->
                s < 240 ? (240 - s) / 240 / 250 : s < 440 ? 0 : Math.min(1, (s - 440) / 100) / 300);
    var other = new KnotSearch(near(Loft.mirrored(points))).straightRun(new int[] {0, 5, 32});
    assertThat(other.first()).isEqualTo(2);
    assertThat(Arrays.copyOfRange(other.knots(), 1, 5)).containsExactly(5, 10, 20, 32);
  }

  @Test
  void a_straight_run_is_laid_unless_it_serves_worse_than_scatter_can_tell() {
    // FM-FIT: as well as 4 parts in n + 4.
    int laid = 0;
    for (int seed = 0; seed < 12; seed++) {
      double bend = 0.0002 + 0.0001 * seed;
      var exact = lofted(40, s -> s < 320 ? bend * (1 - s / 400) : bend * (0.2 - (s - 320) / 400));
      var search = new KnotSearch(near(Shape.scattered(exact, new Random(seed), 0.3)));
      int[] knots = {0, 32};
      var best = StraightRun.between(search, 33, knots);
      boolean well = best.sumOfSquares() < 44.0 / 40 * search.sumOfSquares(knots);
      assertThat(search.straightRun(knots) != null).isEqualTo(well);
      laid += well ? 1 : 0;
    }
    assertThat(laid).isBetween(1, 12);
  }
}
