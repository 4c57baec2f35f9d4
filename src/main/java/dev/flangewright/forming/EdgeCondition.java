package dev.flangewright.forming;

/**
 * How a flange edge was left, with the factor η_edge by which it lowers the split limit (FM-SPLIT).
 *
 * <p>The factors are a shop default, no published source; only their order is known practice: a
 * smooth edge stretches furthest, a burred shear cut splits first. Replace them by the workshop's
 * own trials.
 */
public enum EdgeCondition {
  POLISHED("polished lengthwise", 0.90),
  DEBURRED("deburred both faces", 0.75),
  FILED("filed, file marks left", 0.65),
  SHEARED_WITH_BURR("sheared, burr left", 0.45);

  private final String label;
  private final double factor;

  EdgeCondition(String label, double factor) {
    this.label = label;
    this.factor = factor;
  }

  /** What the bench calls this edge. */
  public String label() {
    return label;
  }

  /** η_edge, dimensionless, above 0 and at most 1; a shop default, no published source. */
  public double factor() {
    return factor;
  }
}
