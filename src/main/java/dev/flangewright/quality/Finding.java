package dev.flangewright.quality;

import org.jspecify.annotations.Nullable;

/**
 * What an inspection is to record.
 *
 * @param causeCode the scrap cause; needed for scrap alone
 * @param stageCode where the piece was lost, or the stage it goes back to; needed for scrap and
 *     rework
 * @param note needed for all but accept
 * @param seenVersion the version of the piece that the inspector saw, or null
 */
public record Finding(
    Outcome outcome,
    @Nullable String causeCode,
    @Nullable String stageCode,
    String note,
    @Nullable Long seenVersion) {}
