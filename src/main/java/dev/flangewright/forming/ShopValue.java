package dev.flangewright.forming;

/**
 * A value that the formulas need and no table of metals gives, so that a workshop may put its own
 * in its place. Where no source is named the default is a shop default.
 */
public enum ShopValue {
  POLISHED_EDGE("Edge factor, polished lengthwise", FormingInput.EDGE_FACTOR, 0.90),
  DEBURRED_EDGE("Edge factor, deburred both faces", FormingInput.EDGE_FACTOR, 0.75),
  FILED_EDGE("Edge factor, filed, file marks left", FormingInput.EDGE_FACTOR, 0.65),
  BURRED_EDGE("Edge factor, sheared, burr left", FormingInput.EDGE_FACTOR, 0.45),
  GRAIN_FACTOR("Grain factor of the split limit", FormingInput.GRAIN_FACTOR, 1),
  RUFFLE_MULTIPLE("Strain a shrinking pass, over ε_cr", FormingInput.RUFFLE_MULTIPLE, 1.5),
  STRAIN_PER_PASS("Least strain a pass", FormingInput.STRAIN_PER_PASS, 0.01),
  SHARE_BEFORE_SOFTENING(
      "Share of the uniform strain before softening", FormingInput.SHARE_BEFORE_SOFTENING, 0.8),
  PASSES_ON_ONE_BLOCK("Passes on one set of blocks", FormingInput.PASSES_ON_ONE_BLOCK, 4),
  K_FACTOR(
      "k, place of the neutral surface",
      FormingInput.K_FACTOR,
      Sheet.DEFAULT_K_FACTOR,
      "FAA-H-8083-31, Airframe vol. 1, ch. 4"),
  ANISOTROPY(
      "R, normal anisotropy, where no certificate gives it",
      FormingInput.ANISOTROPY,
      Sheet.DEFAULT_ANISOTROPY,
      "isotropic sheet; aluminium is often 0.6 to 0.8, from memory");

  /** How a default stands that nobody published. */
  public static final String NO_SOURCE = "shop default, no source";

  private final String label;
  private final FormingInput range;
  private final double byDefault;
  private final String standing;

  ShopValue(String label, FormingInput range, double byDefault) {
    this(label, range, byDefault, NO_SOURCE);
  }

  ShopValue(String label, FormingInput range, double byDefault, String standing) {
    this.label = label;
    this.range = range;
    this.byDefault = byDefault;
    this.standing = standing;
  }

  /** The factor η_edge of an edge left so. */
  public static ShopValue of(EdgeCondition edge) {
    return switch (edge) {
      case POLISHED -> POLISHED_EDGE;
      case DEBURRED -> DEBURRED_EDGE;
      case FILED -> FILED_EDGE;
      case SHEARED_WITH_BURR -> BURRED_EDGE;
    };
  }

  /** What the workshop calls it. */
  public String label() {
    return label;
  }

  /** The values it may have, all dimensionless. */
  public FormingInput range() {
    return range;
  }

  /** The value where the workshop has none of its own, dimensionless. */
  public double byDefault() {
    return byDefault;
  }

  /** The source of the default, or that it has none. */
  public String standing() {
    return standing;
  }

  /** Whether only whole numbers will do. */
  public boolean isCount() {
    return this == PASSES_ON_ONE_BLOCK;
  }
}
