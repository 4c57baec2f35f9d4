package dev.flangewright.forming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Least squares against another way to the same numbers (Hipparchus) and a table's contrasts. */
class LeastSquaresTest {

  private static double[][] drawn(int rows, int columns) {
    var random = new Random(31 * rows + columns);
    var drawn = new double[rows][columns];
    for (double[] row : drawn) {
      for (int j = 0; j < columns; j++) {
        row[j] = random.nextDouble(-2, 3);
      }
    }
    return drawn;
  }

  private static double[] drawn(int count) {
    return new Random(count).doubles(count, -5, 5).toArray();
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "3, 3", "4, 3", "12, 5", "40, 7"})
  void the_solution_is_that_of_a_singular_value_decomposition(int rows, int columns) {
    double[][] a = drawn(rows, columns);
    double[] b = drawn(rows);
    double[] expected =
        new SingularValueDecomposition(new Array2DRowRealMatrix(a))
            .getSolver()
            .solve(new ArrayRealVector(b))
            .toArray();
    assertThat(new LeastSquares(a, b).solution()).containsExactly(expected, within(1e-10));
  }

  @ParameterizedTest
  @CsvSource({"3, 3", "12, 5", "40, 7"})
  void the_variance_is_that_of_the_inverted_normal_matrix(int rows, int columns) {
    double[][] a = drawn(rows, columns);
    var matrix = new Array2DRowRealMatrix(a);
    RealMatrix inverse =
        new LUDecomposition(matrix.transposeMultiply(matrix)).getSolver().getInverse();
    double[] w = drawn(columns);
    double expected =
        inverse.preMultiply(new ArrayRealVector(w)).dotProduct(new ArrayRealVector(w));
    assertThat(new LeastSquares(a, drawn(rows)).variance(w)).isCloseTo(expected, within(1e-9));
  }

  @Test
  void the_quadratic_through_six_even_points_has_the_published_contrasts() {
    // Orthogonal polynomials for n = 6: (5, -1, -4, -4, -1, 5), sum of squares 84, λ = 3/2
    // (Fisher and Yates, Statistical Tables, table XXIII, from memory).
    double[] contrast = {5, -1, -4, -4, -1, 5};
    double[] y = {2, 0, 1, -3, 4, 8};
    var rows = new double[6][];
    double dot = 0;
    for (int i = 0; i < 6; i++) {
      rows[i] = new double[] {1, i, i * i};
      dot += contrast[i] * y[i];
    }
    var fit = new LeastSquares(rows, y);
    assertThat(fit.solution()[2]).isCloseTo(1.5 * dot / 84, within(1e-12));
    assertThat(fit.variance(new double[] {0, 0, 1})).isCloseTo(1.5 * 1.5 / 84, within(1e-12));
  }

  @Test
  void the_triangle_keeps_the_normal_matrix_and_the_turned_side_its_length() {
    double[][] a = drawn(9, 4);
    double[] b = drawn(9);
    var fit = new LeastSquares(a, b);
    double[] x = fit.solution();
    double left = 0;
    for (int i = 0; i < 9; i++) {
      double miss = b[i];
      for (int j = 0; j < 4; j++) {
        miss -= a[i][j] * x[j];
      }
      left += miss * miss;
    }
    for (int j = 0; j < 4; j++) {
      for (int k = 0; k < 4; k++) {
        double normal = 0;
        double turned = 0;
        for (int i = 0; i < 9; i++) {
          normal += a[i][j] * a[i][k];
          turned += fit.triangle(i, j) * fit.triangle(i, k);
        }
        assertThat(turned).isCloseTo(normal, within(1e-10));
        assertThat(j > k ? fit.triangle(j, k) : 0).isZero();
      }
    }
    double all = 0;
    double beyond = 0;
    for (int i = 0; i < 9; i++) {
      all += fit.turned()[i] * fit.turned()[i];
      beyond += i < 4 ? 0 : fit.turned()[i] * fit.turned()[i];
    }
    assertThat(all)
        .isCloseTo(new ArrayRealVector(b).dotProduct(new ArrayRealVector(b)), within(1e-10));
    assertThat(beyond).isCloseTo(left, within(1e-10));
  }

  @Test
  void a_column_that_adds_nothing_gets_nothing() {
    double[][] a = {{1, 2, 0}, {2, 4, 0}, {3, 6, 0}};
    var fit = new LeastSquares(a, new double[] {2, 4, 6});
    assertThat(fit.solution()).containsExactly(new double[] {2, 0, 0}, within(1e-12));
    assertThat(fit.variance(new double[] {0, 1, 1})).isZero();
    // 1/(1 + 4 + 9), the variance of a slope through the origin.
    assertThat(fit.variance(new double[] {1, 0, 0})).isCloseTo(1.0 / 14, within(1e-12));
  }

  @Test
  void fewer_rows_than_unknowns_are_met_exactly() {
    double[][] a = {{1, 1, 3}, {1, -1, 5}};
    assertThat(new LeastSquares(a, new double[] {5, 1}).solution())
        .containsExactly(new double[] {3, 2, 0}, within(1e-12));
  }

  @Test
  void what_is_given_is_left_as_it_is() {
    double[][] a = drawn(5, 2);
    double[] b = drawn(5);
    new LeastSquares(a, b);
    assertThat(a).isDeepEqualTo(drawn(5, 2));
    assertThat(b).isEqualTo(drawn(5));
  }

  @Test
  void a_column_that_adds_nothing_but_rounding_gets_nothing_at_any_scale() {
    double[][] a = drawn(7, 3);
    double[] b = drawn(7);
    var two = new double[7][];
    for (int i = 0; i < 7; i++) {
      a[i][2] = 0.3 * a[i][0] + 0.7 * a[i][1];
      two[i] = new double[] {a[i][0], a[i][1]};
    }
    double[] expected = new LeastSquares(two, b).solution();
    var fit = new LeastSquares(a, b);
    assertThat(fit.solution())
        .containsExactly(new double[] {expected[0], expected[1], 0}, within(1e-12));
    assertThat(fit.variance(new double[] {0, 0, 1})).isZero();
    for (double scale : new double[] {1e-7, 1e7}) {
      var scaled = new double[7][];
      for (int i = 0; i < 7; i++) {
        scaled[i] = new double[] {scale * a[i][0], scale * a[i][1], scale * a[i][2]};
      }
      assertThat(new LeastSquares(scaled, b).solution())
          .containsExactly(
              new double[] {expected[0] / scale, expected[1] / scale, 0}, within(1e-9 / scale));
    }
  }
}
