package dev.flangewright.forming;

/**
 * The band an edge strain lies in for the band of curvature it comes from (FM-BAND).
 *
 * @param low at the most shrinking (left-turning) curvature of the band, natural strain
 * @param high at the most stretching one
 */
public record StrainBand(double low, double high) {}
