package dev.flangewright.overview;

import dev.flangewright.bench.NextJob;
import java.time.Instant;
import java.util.List;

/**
 * What a screen in the shop shows of a build.
 *
 * @param onTheBench pieces with a stage begun, the last begun first
 * @param waiting pieces that wait for a check or their inspection, the longest first
 * @param next what nobody has begun yet, the first to be done first, for the workshop as a whole
 * @param frames frames that have parts
 * @param framesDone those of them whose every part is accepted
 * @param logged what came in last, the newest first
 * @param asOf when it was read
 */
public record Wall(
    long buildId,
    String name,
    List<WallPiece> onTheBench,
    List<WallPiece> waiting,
    List<NextJob> next,
    int frames,
    int framesDone,
    long parts,
    long accepted,
    List<WallEntry> logged,
    Instant asOf) {}
