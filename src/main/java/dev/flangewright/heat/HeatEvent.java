package dev.flangewright.heat;

/**
 * Something that happened to a piece after heat treatment.
 *
 * @param what as it follows the name: {@code put it into the freezer at −20 °C (−4 °F)}
 */
public record HeatEvent(Told told, String what, boolean takenBack) {}
