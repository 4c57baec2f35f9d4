package dev.flangewright.bench;

/**
 * A part that was found, and which of its pieces is meant.
 *
 * @param pieceNumber that of the piece; 0 where it leads to the part sheet
 * @param address of the page to open
 * @param words what it is: {@code "piece 2, in work"}
 * @param exact true unless something else was asked for than what there is
 */
public record Found(
    String partNumber,
    String buildName,
    int pieceNumber,
    String address,
    String words,
    boolean exact) {}
