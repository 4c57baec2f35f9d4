package dev.flangewright.people;

import java.time.Instant;

/**
 * A browser that is signed in under the reader's name.
 *
 * @param mark by which it can be ended; tells nothing that would let anybody in
 * @param system what it runs on, as far as it says: {@code "Android"}
 * @param remembered whether it stays signed in for weeks
 * @param here whether it is the one that asks
 */
public record Device(
    String mark,
    String system,
    Instant signedInAt,
    Instant lastSeenAt,
    boolean remembered,
    boolean here) {}
