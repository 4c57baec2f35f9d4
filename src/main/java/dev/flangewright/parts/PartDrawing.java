package dev.flangewright.parts;

/**
 * What the drawing says of a part, apart from its flanges. Lengths in mm; the thickness is kept as
 * written, in mm, as a gauge ({@code 20 SWG}) or in inches ({@code 0.036 in}).
 */
public record PartDrawing(
    String segment,
    Hand hand,
    String drawing,
    String drawingIssue,
    String alloy,
    String temper,
    String thickness,
    Written insideBendRadiusMm,
    String blockSet) {}
