package dev.flangewright.bench;

import java.time.Instant;

/**
 * The forming window of a piece after its quench, as the ranking reads it.
 *
 * @param closesAt when it is too hard for severe forming
 * @param past that time is over
 * @param inWords how it stands: {@code "24 minutes left of its forming window"}
 */
record ClosingWindow(Instant closesAt, boolean past, String inWords) {}
