package dev.flangewright.parts.exchange;

import dev.flangewright.forming.Sheet;
import dev.flangewright.parts.FlangeDrawing;
import dev.flangewright.parts.WrittenStations;
import org.jspecify.annotations.Nullable;

/**
 * A flange as it would be after the import.
 *
 * @param registerLine its row in register.csv; 0 if it has none there
 * @param inFile its rows in contours.csv; null if the contour is the build's own
 */
record FlangeToCheck(
    FlangeKey key,
    FlangeDrawing drawn,
    WrittenStations stations,
    Sheet sheet,
    int registerLine,
    @Nullable ContourInFile inFile) {}
