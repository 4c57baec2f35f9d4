package dev.flangewright.bench;

import dev.flangewright.blocks.BlocksOfBuild;
import dev.flangewright.people.Clearance;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the ranking asks beyond register and log, read once for a whole build.
 *
 * @param sheetLacking what is missing of the sheet that a part is cut from, as a sentence
 * @param windows the forming windows of quenched pieces, by piece
 * @param cleared the names of those cleared for each sort of work
 * @param today work over blocks that lies begun or was finished today
 * @param passedOn what people passed on today
 */
record ShopFloor(
    BlocksOfBuild blocks,
    Function<PartLine, Optional<String>> sheetLacking,
    Map<Long, ClosingWindow> windows,
    Map<Clearance, List<String>> cleared,
    List<SetUpLine> today,
    List<PassOnLine> passedOn) {}
