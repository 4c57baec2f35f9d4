package dev.flangewright.materials;

/** A sheet gauge number and its thickness. */
public record Gauge(String system, int number, double mm, String source, String knownBy) {}
