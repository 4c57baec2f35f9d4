package dev.flangewright.forming;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * A sheet in plane stress that hardens by a power law, σ̄ = K·ε̄ⁿ, by the theory of total strains
 * with Hill's normal anisotropy R: εθ = (ε̄/σ̄)·(σθ − m·σs), εs = (ε̄/σ̄)·(σs − m·σθ), m = R/(1 +
 * R). Stresses are in units of K, the thickness in units of what it was.
 *
 * @param n strain-hardening exponent
 * @param anisotropy R
 */
record HardeningSheet(double n, double anisotropy) {

  /** Hoop and meridian strain (natural) at a point. */
  record Strains(double hoop, double meridian) {

    double thickness() {
      return Math.exp(-hoop - meridian);
    }
  }

  private double m() {
    return anisotropy / (1 + anisotropy);
  }

  /** ε̄, which is |ε| in a strip that is pulled or pushed along its length. */
  private double effective(Strains e) {
    double m = m();
    double square = e.hoop * e.hoop + e.meridian * e.meridian + 2 * m * e.hoop * e.meridian;
    return Math.sqrt(square / (1 - m * m));
  }

  /** Work on a unit of volume, ∫ σ̄ dε̄. */
  double work(Strains e) {
    return Math.pow(effective(e), n + 1) / (n + 1);
  }

  private double stiffness(Strains e) {
    double effective = effective(e);
    return effective == 0 ? 0 : Math.pow(effective, n - 1) / (1 - m() * m());
  }

  double hoopStress(Strains e) {
    return stiffness(e) * (e.hoop + m() * e.meridian);
  }

  double meridianStress(Strains e) {
    return stiffness(e) * (e.meridian + m() * e.hoop);
  }

  /** The strains at which the hoop strain is the given one and t·σs the given force per length. */
  Strains under(double hoop, double force) {
    double free = -m() * hoop;
    if (force == 0) {
      return new Strains(hoop, free);
    }
    UnivariateFunction excess =
        x -> {
          var strains = new Strains(hoop, free + x);
          return strains.thickness() * meridianStress(strains) - force;
        };
    double most = Math.signum(force) * n;
    var solver = new BracketingNthOrderBrentSolver(1e-14, 1e-15, 5);
    double x = solver.solve(200, excess, Math.min(0, most), Math.max(0, most));
    return new Strains(hoop, free + x);
  }
}
