package dev.flangewright.materials;

import org.jspecify.annotations.Nullable;

/** A row of the shipped thickness tolerances of sheet, plus and minus, in mm. */
public record SheetTolerance(
    String standard,
    String alloyGroup,
    @Nullable Double thkOverMm,
    @Nullable Double thkUptoMm,
    @Nullable String width,
    @Nullable Double toleranceMm,
    String source,
    String knownBy,
    @Nullable String note) {}
