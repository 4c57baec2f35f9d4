package dev.flangewright.parts;

/** A frame in the list of a build's frames, with how many parts it carries. */
public record FrameLine(long id, String code, Written positionMm, long parts) {}
