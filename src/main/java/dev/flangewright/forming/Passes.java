package dev.flangewright.forming;

/**
 * In how many passes the edge strain is taken.
 *
 * <p>FM-PASS: strain per pass = max(1.5·ε_cr, 1 %) for an edge that shrinks, 1 % for one that
 * stretches; passes = |ε| divided by it, rounded up, at least 1. ε_cr by FM-RUFFLE. 1.5 and 1 % are
 * shop defaults, no source: a ruffle half as high again as the first is still hammered down, and a
 * round of hammering takes about one per cent. Neglected: hardening between passes (errs low).
 */
public final class Passes {

  private Passes() {}

  /** The strain per pass of a workshop, a positive natural strain. */
  public static double strainPerPass(
      double edgeStrain, double thicknessMm, double flatWidthMm, Practice practice) {
    if (edgeStrain >= 0) {
      return practice.strainPerPass();
    }
    double critical = Ruffling.criticalStrain(thicknessMm, flatWidthMm);
    return Math.max(practice.ruffleMultiple() * critical, practice.strainPerPass());
  }

  /** Number of passes, at least 1: the turning itself. */
  public static int count(double edgeStrain, double strainPerPass) {
    return (int) Math.max(1, Math.ceil(Math.abs(edgeStrain) / strainPerPass));
  }
}
