package dev.flangewright.forming;

import java.util.Arrays;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/** Linear least squares: the x for which |A·x − b| is smallest, by Householder reflections. */
final class LeastSquares {

  private final RealMatrix triangle;
  private final double[] rotated;
  private final int unknowns;

  /**
   * @param a rows of the matrix, at least one
   * @param b right-hand side
   */
  LeastSquares(double[][] a, double[] b) {
    this.unknowns = a[0].length;
    int rows = Math.max(a.length, unknowns);
    var matrix = MatrixUtils.createRealMatrix(rows, unknowns);
    matrix.setSubMatrix(a, 0, 0);
    var qr = new QRDecomposition(matrix);
    this.triangle = qr.getR();
    this.rotated = qr.getQT().operate(Arrays.copyOf(b, rows));
  }

  /** The solution; a column that adds nothing to those before it gets zero. */
  double[] solution() {
    return backSubstituted(rotated);
  }

  /** w'·(A'A)⁻¹·w, the variance of w'·x for unit variance of b. */
  double variance(double[] w) {
    var z = new double[unknowns];
    double sum = 0;
    for (int i = 0; i < unknowns; i++) {
      double value = w[i];
      for (int k = 0; k < i; k++) {
        value -= triangle.getEntry(k, i) * z[k];
      }
      z[i] = negligible(i) ? 0 : value / triangle.getEntry(i, i);
      sum += z[i] * z[i];
    }
    return sum;
  }

  private double[] backSubstituted(double[] b) {
    var x = new double[unknowns];
    for (int i = unknowns - 1; i >= 0; i--) {
      double value = b[i];
      for (int k = i + 1; k < unknowns; k++) {
        value -= triangle.getEntry(i, k) * x[k];
      }
      x[i] = negligible(i) ? 0 : value / triangle.getEntry(i, i);
    }
    return x;
  }

  private boolean negligible(int i) {
    double norm = 0;
    for (int k = 0; k <= i; k++) {
      norm = Math.hypot(norm, triangle.getEntry(k, i));
    }
    return Math.abs(triangle.getEntry(i, i)) <= 1e-11 * norm;
  }
}
