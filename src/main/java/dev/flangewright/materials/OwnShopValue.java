package dev.flangewright.materials;

/**
 * A shop value that a build wants to use.
 *
 * @param source where it comes from: a trial, a notebook, a process sheet
 * @param reason why the default will not do; may be empty
 */
public record OwnShopValue(double amount, String source, String reason) {}
