package dev.flangewright.heat;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * The forming window of a piece, for lists. Whether a stage still to come needs it is for the list
 * to know.
 *
 * @param closesAt when it closes or has closed if the piece stays where it is; null where the table
 *     has no figure
 * @param letLate the lead lets it be formed although the window is past
 * @param inWords as it follows the name of the piece: {@code "forming window closes in 12 min"}
 */
public record OpenWindow(
    String alloy, WindowState state, @Nullable Instant closesAt, boolean letLate, String inWords) {}
