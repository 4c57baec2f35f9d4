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

  /** Strain per pass over ε_cr: shop default, no source. */
  public static final double DEFAULT_RUFFLE_MULTIPLE = 1.5;

  /** Strain that any pass takes: shop default, no source. */
  public static final double DEFAULT_STRAIN = 0.01;

  private Passes() {}

  /** The default strain per pass, a positive natural strain. */
  public static double strainPerPass(double edgeStrain, double thicknessMm, double flatWidthMm) {
    if (edgeStrain >= 0) {
      return DEFAULT_STRAIN;
    }
    double critical = Ruffling.criticalStrain(thicknessMm, flatWidthMm);
    return Math.max(DEFAULT_RUFFLE_MULTIPLE * critical, DEFAULT_STRAIN);
  }

  /** Number of passes, at least 1: the turning itself. */
  public static int count(double edgeStrain, double strainPerPass) {
    return (int) Math.max(1, Math.ceil(Math.abs(edgeStrain) / strainPerPass));
  }
}
