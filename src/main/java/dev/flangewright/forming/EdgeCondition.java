package dev.flangewright.forming;

/**
 * How a flange edge was left, with the factor η_edge by which it lowers the split limit (FM-SPLIT).
 *
 * <p>The factors are a shop default, no published source; only their order is known practice: a
 * smooth edge stretches furthest, a burred shear cut splits first. Replace them by the workshop's
 * own trials.
 */
public enum EdgeCondition {
  POLISHED("polished lengthwise"),
  DEBURRED("deburred both faces"),
  FILED("filed, file marks left"),
  SHEARED_WITH_BURR("sheared, burr left");

  private final String label;

  EdgeCondition(String label) {
    this.label = label;
  }

  /** What the bench calls this edge. */
  public String label() {
    return label;
  }

  /** The default η_edge, dimensionless; a shop default, no source. See {@link Practice}. */
  public double factor() {
    return ShopValue.of(this).byDefault();
  }
}
