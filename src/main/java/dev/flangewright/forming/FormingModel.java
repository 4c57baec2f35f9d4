package dev.flangewright.forming;

/** The formulas as a whole. */
public final class FormingModel {

  /** Raised whenever a formula or a default changes, so that stored figures can be told apart. */
  public static final int VERSION = 2;

  private FormingModel() {}
}
