package dev.flangewright.forming;

import org.jspecify.annotations.Nullable;

/**
 * Every number the calculation takes, with its name and the range it may have. The ranges are the
 * limits of the shop's trade and of the model, not of any one machine: common practice, no source.
 */
public enum FormingInput {
  THICKNESS("thicknessMm", Range.fromTo(0.1, 10)),
  INSIDE_BEND_RADIUS("insideBendRadiusMm", Range.fromTo(0, 100)),
  K_FACTOR("kFactor", Range.fromTo(0, 1)),
  ANISOTROPY("anisotropy", Range.fromTo(0.1, 5)),
  CONTOUR_RADIUS("contourRadiusMm", Range.aboveUpTo(0, 1e12)),
  FLANGE_WIDTH("flangeWidthMm", Range.aboveUpTo(0, 500)),
  BEND_ANGLE("bendAngleDeg", Range.between(0, 165)),
  TURN("turnDeg", Range.between(-165, 165)),
  X("xMm", Range.fromTo(-100_000, 100_000)),
  Y("yMm", Range.fromTo(-100_000, 100_000)),
  FIT_TOLERANCE("toleranceMm", Range.fromTo(0, 5)),
  STATION_SPACING("spacingMm", Range.fromTo(0.1, 10_000)),
  STATION_WIDTH("widthMm", Range.aboveUpTo(0, 500)),
  ELONGATION("elongationPercent", Range.aboveUpTo(0, 200)),
  PROOF("proofMpa", Range.aboveUpTo(0, 5_000)),
  UTS("utsMpa", Range.aboveUpTo(0, 5_000)),
  YOUNG("youngMpa", Range.fromTo(1_000, 1_000_000)),
  DENSITY("densityKgM3", Range.aboveUpTo(0, 25_000)),
  MIN_BEND_RADIUS("minBendRadiusMm", Range.fromTo(0, 500)),
  GRAIN_FACTOR("grainFactor", Range.aboveUpTo(0, 1)),
  EDGE_FACTOR("edgeFactor", Range.aboveUpTo(0, 1)),
  RUFFLE_MULTIPLE("ruffleMultiple", Range.aboveUpTo(0, 20)),
  STRAIN_PER_PASS("strainPerPass", Range.fromTo(0.001, 0.2)),
  SHARE_BEFORE_SOFTENING("shareBeforeSoftening", Range.aboveUpTo(0, 1)),
  PASSES_ON_ONE_BLOCK("passesOnOneBlock", Range.fromTo(1, 50)),
  UNIFORM_STRAIN("uniformStrain", Range.aboveUpTo(0, 1)),
  MIN_BEND_RATIO("minBendRatio", Range.fromTo(0, 50)),
  WEB_DEPTH("webDepthMm", Range.aboveUpTo(0, 2_000)),
  OTHER_FLAT_WIDTH("otherFlatWidthMm", Range.fromTo(0, 500)),
  GAP("gapMm", Range.fromTo(0, 100)),
  SPAN("spanMm", Range.fromTo(5, 10_000)),
  EDGE_THICKNESS("edgeThicknessMm", Range.fromTo(0.05, 20)),
  ZONE_LENGTH("zoneLengthMm", Range.fromTo(5, 1_000)),
  CUT_FROM("cutFromMm", Range.fromTo(0, 100_000)),
  CUT_TO("cutToMm", Range.aboveUpTo(0, 100_000)),
  CUT_DEPTH("cutDepthMm", Range.aboveUpTo(0, 1_000)),
  CUT_LEFT("cutLeftMm", Range.fromTo(-1_000, 500)),
  HOLE_DIAMETER("holeDiameterMm", Range.aboveUpTo(0, 1_000)),
  TRIM_ALLOWANCE("trimAllowanceMm", Range.fromTo(0, 100));

  private final String field;
  private final Range range;

  FormingInput(String field, Range range) {
    this.field = field;
    this.range = range;
  }

  /** The name in the API; in CSV files the same words in small letters joined by underscores. */
  public String field() {
    return field;
  }

  public @Nullable Double min() {
    return range.min();
  }

  public @Nullable Double max() {
    return range.max();
  }

  /** The allowed range as it follows "must be", for hints beside a form field. */
  public String rangeText() {
    return range.text();
  }

  /**
   * The value itself when it is a number within the range.
   *
   * @throws FormingException NOT_FINITE or OUT_OF_RANGE
   */
  public double check(double value) {
    if (!Double.isFinite(value)) {
      throw FormingException.of(FormingException.Reason.NOT_FINITE, field, value, range);
    }
    if (!range.contains(value)) {
      throw FormingException.of(FormingException.Reason.OUT_OF_RANGE, field, value, range);
    }
    return value;
  }

  /** As {@link #check}, where a missing value is allowed. */
  public void checkIfKnown(@Nullable Double value) {
    if (value != null) {
      check(value);
    }
  }
}
