package dev.flangewright.parts.web;

import dev.flangewright.parts.CutoutEntry;
import dev.flangewright.parts.HoleEntry;
import dev.flangewright.parts.LayoutEntry;
import dev.flangewright.parts.Part;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** Holes, cutouts and trim allowance of a part, numbers as they were written. */
record LayoutAnswer(
    @Schema(description = "Send it back with a change.") long version,
    String trimAllowanceMm,
    @Schema(description = "In the axes of the contours, mm.") List<HoleEntry> holes,
    @Schema(
            description =
                "Along the mould line from the first station, mm; depth from the finished edge,"
                    + " empty for one through the bend.")
        List<CutoutEntry> cutouts) {

  static LayoutAnswer of(Part part) {
    LayoutEntry now = LayoutEntry.of(part);
    return new LayoutAnswer(part.version(), now.trimAllowanceMm(), now.holes(), now.cutouts());
  }
}
