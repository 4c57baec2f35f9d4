package dev.flangewright.parts;

import dev.flangewright.forming.FlangeKind;

/** What the drawing says of one flange. Widths in mm, to the mould line. */
public record FlangeDrawing(FlangeKind kind, Written finishedWidthMm, Written workingWidthMm) {}
