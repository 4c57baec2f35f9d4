package dev.flangewright.forming;

/**
 * A stretch of contour that bends one way (FM-RUN).
 *
 * @param kind SHRINK, STRETCH or PLAIN
 * @param firstStation number of its first station
 * @param lastStation number of its last station
 * @param tightestRadiusMm smallest mould-line radius in the run; infinite when plain
 */
public record ContourRun(
    FlangeKind kind, int firstStation, int lastStation, double tightestRadiusMm) {}
