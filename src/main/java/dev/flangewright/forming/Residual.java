package dev.flangewright.forming;

/**
 * What is still to be done to an edge, as a gauge tells it.
 *
 * @param strain natural strain still to take out (shrink) or put in (stretch), its magnitude
 * @param millimetres of edge still to take out or put in over the length that was gauged
 * @param lowerBound whether the true rest can only be larger: a ruffled edge bows a part less than
 *     a smooth one
 */
public record Residual(double strain, double millimetres, boolean lowerBound) {}
