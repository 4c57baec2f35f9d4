package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * How far a stretch flange's edge can be stretched before it splits.
 *
 * <pre>
 * FM-SPLIT ε_lim = η_edge·η_grain·ln(1 + A/100)    utilisation = ε/ε_lim
 * A elongation at fracture (%), η_edge by {@link EdgeCondition}, η_grain 1 unless the edge runs
 * across the grain's weak direction, ε edge strain
 * </pre>
 *
 * <p>The logarithm turns the tensile elongation into a natural strain: derived. That a stretched
 * free edge is in uniaxial tension and its limit set by the tensile elongation: Computer simulation
 * and experimental validation of stretch flanging (abstract read), and Dudra and Shah, J. Mater.
 * Shaping Technol. 6 (1988) 91–101. η_edge and η_grain are shop defaults, no source; their order is
 * known: punched edges split first (Li, Wang and Yan, DEStech Trans. Eng. Technol. Res., 2016).
 * Neglected: that elongation includes the neck (a short gauge length flatters the limit, which then
 * errs high) and that the strain falls off from the edge inwards, which delays the split (errs
 * low).
 */
public final class SplitLimit {

  private SplitLimit() {}

  /** ε_lim by the default factors; null when the elongation is unknown. */
  public static @Nullable Double strain(MetalValues metal, EdgeCondition edge) {
    return strain(metal, edge, Practice.DEFAULT);
  }

  /** ε_lim by a workshop's factors; null when the elongation is unknown. */
  public static @Nullable Double strain(MetalValues metal, EdgeCondition edge, Practice practice) {
    var elongation = metal.elongationPercent();
    return elongation == null
        ? null
        : practice.edgeFactor(edge) * practice.grainFactor() * Math.log1p(elongation / 100);
  }

  /** ε/ε_lim; 0 for an edge that does not stretch, null when the limit is unknown and needed. */
  public static @Nullable Double utilisation(double edgeStrain, @Nullable Double limitStrain) {
    if (edgeStrain <= 0) {
      return 0.0;
    }
    return limitStrain == null ? null : edgeStrain / limitStrain;
  }
}
