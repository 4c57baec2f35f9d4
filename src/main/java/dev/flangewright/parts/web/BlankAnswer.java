package dev.flangewright.parts.web;

import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.forming.Point;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The developed outline of a part, in the axes of its contours. */
record BlankAnswer(
    @Schema(description = "What is wrong with the outline; null when nothing is.")
        @Nullable String problem,
    @Nullable Double areaMm2,
    @Nullable Double massKg,
    PartDevelopment.Bounds box,
    @Schema(
            description =
                "A single flange was closed by its chord: the web's far side is not known, so area"
                    + " and mass reach only to the chord.")
        boolean closedByChord,
    @Schema(description = "Corners in order, counter-clockwise, the last not repeating the first.")
        List<Point> outline) {

  static BlankAnswer of(PartDevelopment developed, @Nullable Double massKg) {
    return new BlankAnswer(
        developed.problem(),
        developed.areaMm2(),
        massKg,
        developed.bounds(),
        developed.closedByChord(),
        developed.outline());
  }
}
