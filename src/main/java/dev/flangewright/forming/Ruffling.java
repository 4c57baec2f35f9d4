package dev.flangewright.forming;

/**
 * When the edge of a shrink flange ruffles, how long the ruffles are and how high.
 *
 * <pre>
 * FM-RUFFLE ε_cr = κ·π²/(12(1 − ν²))·(t/b)²    ratio = |ε|/ε_cr
 * FM-PITCH  λ = 1.65·b     h = (2λ/π)·√ε
 * t thickness (mm), b = W − SB flat width of the flange (mm), κ = 0.57, ν = 0.5, ε hoop strain to
 * swallow, λ one half-wave along the edge (mm), h height of the half-wave over the flange (mm)
 * </pre>
 *
 * <p>κ: EN 1993-1-5:2006, table 4.2, outstand with compression at the free edge falling to zero at
 * the root (ψ = 0), hinged root (value from memory; a long hinged plate recomputed with ν = 0.3
 * gives 0.567). ν = 0.5: in the plastic range the secant modulus that lowers the critical stress
 * (Stowell, NACA Report 898, 1948) cancels when the criterion is written in strain, and plastic
 * flow keeps its volume. λ: half-wave of the lowest buckle with a clamped root, 1.65 b, classical
 * plate theory (from memory, recomputed). h: a sine half-wave of that length is longer than its
 * base by h²π²/(4λ²): derived.
 *
 * <p>Valid for flanges that are plates, b above about 5 t. Neglected: the help of the bend as a
 * stiff root (a clamped root bears about three times as much) and of the contour's curvature, so
 * the ratio errs high. The other way: κ = 0.57 was found with ν = 0.3; a long hinged flange
 * computed with ν = 0.5 throughout would have κ = 8(1 − ν)/π² = 0.41, that is ε_cr lower by 29 %;
 * and an uneven edge starts to ruffle earlier.
 */
public final class Ruffling {

  /** κ for ψ = 0, compression largest at the free edge: EN 1993-1-5:2006 table 4.2. */
  static final double EDGE_LOADED_FACTOR = 0.57;

  /** ν of a metal that flows plastically: volume constancy. */
  static final double PLASTIC_POISSON = 0.5;

  /** Half-wave over flat width, clamped root: classical plate theory, from memory. */
  static final double HALF_WAVE_OVER_WIDTH = 1.65;

  private Ruffling() {}

  /** ε_cr, a positive strain; infinite for a flange that is all bend (b = 0). */
  public static double criticalStrain(double thicknessMm, double flatWidthMm) {
    return criticalStrain(EDGE_LOADED_FACTOR, PLASTIC_POISSON, thicknessMm, flatWidthMm);
  }

  static double criticalStrain(double factor, double poisson, double thicknessMm, double widthMm) {
    double slenderness = thicknessMm / widthMm;
    return factor * Math.PI * Math.PI / (12 * (1 - poisson * poisson)) * slenderness * slenderness;
  }

  /** |ε|/ε_cr for an edge that shrinks; 0 for one that does not. */
  public static double ratio(double edgeStrain, double thicknessMm, double flatWidthMm) {
    return edgeStrain < 0 ? -edgeStrain / criticalStrain(thicknessMm, flatWidthMm) : 0;
  }

  /** λ, one half-wave, mm. */
  public static double pitchMm(double flatWidthMm) {
    return HALF_WAVE_OVER_WIDTH * flatWidthMm;
  }

  /**
   * h of a ruffle that swallows the edge's whole shrink strain, mm; 0 for an edge that stretches.
   */
  public static double heightMm(double edgeStrain, double flatWidthMm) {
    return 2 * pitchMm(flatWidthMm) / Math.PI * Math.sqrt(Math.max(0, -edgeStrain));
  }
}
