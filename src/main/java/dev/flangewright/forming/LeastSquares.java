package dev.flangewright.forming;

import java.util.Arrays;

/**
 * Linear least squares: the x for which |A·x − b| is smallest, by Householder reflections, which
 * turn A into an upper triangle R and b along with it.
 */
final class LeastSquares {

  private static final double NEGLIGIBLE = 1e-11;

  private final double[][] a;
  private final double[] b;
  private final int unknowns;

  /**
   * @param rows of the matrix, at least one; left as they are
   * @param right right-hand side
   */
  LeastSquares(double[][] rows, double[] right) {
    this.unknowns = rows[0].length;
    int count = Math.max(rows.length, unknowns);
    this.a = Arrays.copyOf(rows, count);
    this.b = Arrays.copyOf(right, count);
    for (int i = 0; i < count; i++) {
      a[i] = i < rows.length ? rows[i].clone() : new double[unknowns];
    }
    for (int k = 0; k < unknowns; k++) {
      reflect(k);
    }
  }

  /** Turns column k so that nothing is left below its diagonal. */
  private void reflect(int k) {
    double square = 0;
    for (int i = k; i < a.length; i++) {
      square += a[i][k] * a[i][k];
    }
    double norm = Math.sqrt(square);
    if (norm == 0) {
      return;
    }
    double diagonal = a[k][k] > 0 ? -norm : norm;
    double[] mirror = new double[a.length];
    for (int i = k; i < a.length; i++) {
      mirror[i] = a[i][k];
    }
    mirror[k] -= diagonal;
    double scale = -1 / (diagonal * mirror[k]);
    reflectColumns(k, mirror, scale);
    a[k][k] = diagonal;
    for (int i = k + 1; i < a.length; i++) {
      a[i][k] = 0;
    }
  }

  private void reflectColumns(int k, double[] mirror, double scale) {
    double[] shares = new double[unknowns];
    double share = 0;
    for (int i = k; i < a.length; i++) {
      for (int j = k + 1; j < unknowns; j++) {
        shares[j] += mirror[i] * a[i][j];
      }
      share += mirror[i] * b[i];
    }
    for (int i = k; i < a.length; i++) {
      for (int j = k + 1; j < unknowns; j++) {
        a[i][j] -= scale * shares[j] * mirror[i];
      }
      b[i] -= scale * share * mirror[i];
    }
  }

  /** Entry of R. */
  double triangle(int row, int column) {
    return a[row][column];
  }

  /** The right-hand side, turned like the matrix: beyond the unknowns, what no x can take away. */
  double[] turned() {
    return b;
  }

  /** x; zero for a column that adds nothing to those before it. */
  double[] solution() {
    var x = new double[unknowns];
    for (int i = unknowns - 1; i >= 0; i--) {
      double value = b[i];
      for (int k = i + 1; k < unknowns; k++) {
        value -= a[i][k] * x[k];
      }
      x[i] = negligible(i) ? 0 : value / a[i][i];
    }
    return x;
  }

  /** w'·(A'A)⁻¹·w, the variance of w'·x for unit variance of b. */
  double variance(double[] w) {
    var z = new double[unknowns];
    double sum = 0;
    for (int i = 0; i < unknowns; i++) {
      double value = w[i];
      for (int k = 0; k < i; k++) {
        value -= a[k][i] * z[k];
      }
      z[i] = negligible(i) ? 0 : value / a[i][i];
      sum += z[i] * z[i];
    }
    return sum;
  }

  private boolean negligible(int i) {
    double norm = 0;
    for (int k = 0; k <= i; k++) {
      norm = Math.hypot(norm, a[k][i]);
    }
    return Math.abs(a[i][i]) <= NEGLIGIBLE * norm;
  }
}
