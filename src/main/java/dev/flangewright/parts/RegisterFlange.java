package dev.flangewright.parts;

import dev.flangewright.forming.FlangeKind;
import org.jspecify.annotations.Nullable;

/** A flange as the register lists it; the figures are null where they cannot be computed. */
public record RegisterFlange(
    long partId,
    String name,
    FlangeKind kind,
    @Nullable Double peakEdgeStrain,
    @Nullable Double gatherMm) {}
