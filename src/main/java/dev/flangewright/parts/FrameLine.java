package dev.flangewright.parts;

import org.jspecify.annotations.Nullable;

/**
 * A frame in the list of a build's frames, when the jig needs it, and how many parts it carries.
 */
public record FrameLine(
    long id, String code, Written positionMm, @Nullable Integer jigOrder, long parts) {}
