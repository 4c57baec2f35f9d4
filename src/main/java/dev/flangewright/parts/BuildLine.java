package dev.flangewright.parts;

/** A build in the list of builds, with how much is in its register. */
public record BuildLine(long id, String name, String note, long frames, long parts) {}
