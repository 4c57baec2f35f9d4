package dev.flangewright.parts.exchange;

/**
 * What an import has stored.
 *
 * @param stored as it was planned; if it changes nothing, nothing was stored
 */
public record ImportResult(ImportPlan stored) {}
