package dev.flangewright.forming;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The bend part of FM-DEV's integral, {@code ∫ (1 + c·sin u)^m du} from 0 to θ, dimensionless.
 *
 * <p>Where the bend is small beside the contour, |c| up to 0.2, by the binomial series
 *
 * <pre>
 * Σ a_k·S_k,  a_k = a_(k−1)·c·(m − k + 1)/k,  S_k = ∫ sin^k u du = ((k − 1)·S_(k−2) − cos θ·sin^(k−1) θ)/k
 * </pre>
 *
 * whose terms fall off faster than |c|^k, so that it is exact to rounding after 8 terms on a usual
 * contour and 23 at most. Elsewhere by 32-point Gauss-Legendre quadrature (truncation below 1e-12
 * while 1 + c·sin u stays above 0.15; nearer the centre of a concave curve strains are beyond any
 * sheet). Derived.
 */
final class BendIntegral {

  private static final GaussIntegrator QUADRATURE = new GaussIntegratorFactory().legendre(32);
  private static final double WIDE = 0.2;
  private static final double NEGLIGIBLE = 1e-17;

  private BendIntegral() {}

  /**
   * @param c signed ratio of the bend's neutral radius to the tangent line's; 1 + c·sin u positive
   */
  static double of(double c, double theta, double m) {
    return Math.abs(c) <= WIDE ? series(c, theta, m) : quadrature(c, theta, m);
  }

  private static double series(double c, double theta, double m) {
    double cos = Math.cos(theta);
    double sin = Math.sin(theta);
    double before = theta;
    double here = 1 - cos;
    double power = sin;
    double sum = theta;
    double factor = c * m;
    for (int k = 2; Math.abs(factor) > NEGLIGIBLE; k++) {
      sum += factor * here;
      double next = ((k - 1) * before - cos * power) / k;
      before = here;
      here = next;
      power *= sin;
      factor *= c * (m - k + 1) / k;
    }
    return sum;
  }

  private static double quadrature(double c, double theta, double m) {
    double half = theta / 2;
    return half * QUADRATURE.integrate(u -> Math.pow(1 + c * Math.sin(half * (1 + u)), m));
  }
}
