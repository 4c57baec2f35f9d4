package dev.flangewright.forming;

import java.util.Map;

/**
 * The shop values that figures are computed with: a workshop's own where it has them, the defaults
 * for the rest.
 *
 * @param own the workshop's own values, each in its range, dimensionless
 */
public record Practice(Map<ShopValue, Double> own) {

  /** The defaults throughout. */
  public static final Practice DEFAULT = new Practice(Map.of());

  /**
   * @throws FormingException if a value is out of its range, or no whole number where only that
   *     will do
   */
  public Practice {
    own = Map.copyOf(own);
    own.forEach(Practice::check);
  }

  /**
   * @throws FormingException if the value is out of its range, or no whole number where only that
   *     will do
   */
  public static void check(ShopValue which, double amount) {
    which.range().check(amount);
    if (which.isCount() && amount != Math.rint(amount)) {
      throw FormingException.of(
          FormingException.Reason.NOT_WHOLE, which.range().field(), amount, null);
    }
  }

  /** The value in force, dimensionless. */
  public double value(ShopValue which) {
    return own.getOrDefault(which, which.byDefault());
  }

  /** η_edge. */
  public double edgeFactor(EdgeCondition edge) {
    return value(ShopValue.of(edge));
  }

  /** η_grain. */
  public double grainFactor() {
    return value(ShopValue.GRAIN_FACTOR);
  }

  /** Strain of a shrinking pass over ε_cr. */
  public double ruffleMultiple() {
    return value(ShopValue.RUFFLE_MULTIPLE);
  }

  /** Natural strain that any pass takes. */
  public double strainPerPass() {
    return value(ShopValue.STRAIN_PER_PASS);
  }

  /** Share of the uniform strain to use up before softening. */
  public double shareBeforeSoftening() {
    return value(ShopValue.SHARE_BEFORE_SOFTENING);
  }

  /** Passes that one set of blocks serves. */
  public int passesOnOneBlock() {
    return (int) value(ShopValue.PASSES_ON_ONE_BLOCK);
  }

  /** k. */
  public double kFactor() {
    return value(ShopValue.K_FACTOR);
  }

  /** R of a metal of which no certificate tells it. */
  public double anisotropy() {
    return value(ShopValue.ANISOTROPY);
  }
}
