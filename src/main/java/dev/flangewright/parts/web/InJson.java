package dev.flangewright.parts.web;

import org.jspecify.annotations.Nullable;

/** What every answer with figures in it has to mind. */
final class InJson {

  static final String CAUTION =
      "Figures are shop estimates. The approved drawing, local rules and licensed people decide.";

  private InJson() {}

  /** JSON has no infinity: the radius of a straight run, and a use beyond any limit, are null. */
  static @Nullable Double finite(@Nullable Double value) {
    return value == null || !Double.isFinite(value) ? null : value;
  }
}
