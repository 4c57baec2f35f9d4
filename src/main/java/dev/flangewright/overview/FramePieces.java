package dev.flangewright.overview;

/** How many parts of a frame there are, or have a piece that passed. */
public record FramePieces(long frameId, long parts) {}
