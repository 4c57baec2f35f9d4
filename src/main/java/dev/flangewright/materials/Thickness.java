package dev.flangewright.materials;

/** A sheet thickness as written and in mm. */
public record Thickness(String written, double mm) {}
