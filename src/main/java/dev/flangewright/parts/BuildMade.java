package dev.flangewright.parts;

/** A build has been made; told inside the same transaction. */
public record BuildMade(long buildId) {}
