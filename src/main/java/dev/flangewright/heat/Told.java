package dev.flangewright.heat;

import java.time.Instant;

/**
 * Who says that something was done, and when.
 *
 * @param at when it was done
 * @param note empty if there is none
 * @param receivedAt when the installation learned of it
 */
public record Told(String who, Instant at, String note, Instant receivedAt) {}
