package dev.flangewright.bench;

/**
 * A stage of a build's routes.
 *
 * @param parts how many parts go through it
 */
public record StageShare(String code, String name, int parts) {}
