package dev.flangewright.quality;

/** How often inspections of a build came to an outcome. */
public record OutcomeCount(Outcome outcome, long inspections) {}
