package dev.flangewright.overview;

import dev.flangewright.bench.EntryAction;
import java.time.Instant;

/** A line of the log of some piece, as the wall board reads it. */
public record WallEntry(
    String partNumber,
    int number,
    String who,
    EntryAction action,
    String stage,
    boolean undone,
    Instant at) {}
