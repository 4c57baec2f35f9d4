package dev.flangewright.parts.exchange;

/**
 * One value that an import changes.
 *
 * @param part the part number, or the frame for a frame's position
 * @param flange empty when the whole part is meant
 * @param field the column; at a station "station 7 x_mm"
 * @param was the value now, empty if there is none
 * @param becomes the value in the file
 */
public record Change(String part, String flange, String field, String was, String becomes) {}
