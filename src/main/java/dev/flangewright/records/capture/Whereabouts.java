package dev.flangewright.records.capture;

import org.jspecify.annotations.Nullable;

/**
 * Where a row belongs.
 *
 * @param chain of the build it belongs to, or of the installation
 * @param label what people call it, from the part down: {@code "TW-F07-S3L, piece 1, cut"}
 * @param part the part number it belongs to; null if to none
 */
record Whereabouts(String chain, String label, @Nullable String part) {}
