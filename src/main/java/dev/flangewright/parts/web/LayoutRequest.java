package dev.flangewright.parts.web;

import dev.flangewright.parts.CutoutEntry;
import dev.flangewright.parts.HoleEntry;
import dev.flangewright.parts.LayoutEntry;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Holes, cutouts and trim allowance that replace those of a part. */
record LayoutRequest(
    @Schema(description = "As read; refused if somebody changed the part since.")
        @NotNull(message = "is missing")
        Long version,
    @Schema(description = "Metal left outside the developed outline, mm, 0 to 100.", example = "0")
        @NotNull(message = "is missing")
        String trimAllowanceMm,
    @Schema(description = "All holes; left out, the part has none.")
        @Nullable List<HoleEntry> holes,
    @Schema(description = "All cutouts; left out, the part has none.")
        @Nullable List<CutoutEntry> cutouts) {

  LayoutEntry entry() {
    return new LayoutEntry(
        trimAllowanceMm, holes == null ? List.of() : holes, cutouts == null ? List.of() : cutouts);
  }
}
