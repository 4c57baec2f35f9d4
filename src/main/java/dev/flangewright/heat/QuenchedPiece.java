package dev.flangewright.heat;

/**
 * What has to be known of a piece that is quenched.
 *
 * @param alloy as the drawing names it: {@code Alclad 2024}
 */
public record QuenchedPiece(long pieceId, long buildId, String alloy) {}
