package dev.flangewright.materials;

/** A row of the shipped minimum bend radii: radius over thickness at one thickness (mm). */
public record BendRadiusRow(
    String alloy,
    String temper,
    double thkMm,
    double rOverTLow,
    double rOverTHigh,
    String source,
    String knownBy) {}
