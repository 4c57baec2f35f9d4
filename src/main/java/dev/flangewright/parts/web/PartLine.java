package dev.flangewright.parts.web;

import dev.flangewright.materials.Thickness;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartDrawing;
import dev.flangewright.parts.PartProgress.Progress;
import dev.flangewright.parts.PartState;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A part as the register lists it. */
record PartLine(
    long id,
    String partNumber,
    String frame,
    String segment,
    @Schema(description = "left, right or none.") String hand,
    String alloy,
    String temper,
    @Schema(description = "As written: 1.2, 20 SWG or 0.036 in.") String thickness,
    @Nullable Double thicknessMm,
    @Schema(description = "How far the part has come, judged by its furthest piece.")
        PartState state,
    @Schema(description = "Stages finished on the furthest piece.") int stagesDone,
    int stagesTotal,
    @Schema(description = "Pieces of this part that were scrapped.") int scrappedPieces,
    ExtractAnswer figures) {

  static PartLine of(Part part, Progress progress, Optional<Thickness> thickness) {
    PartDrawing drawn = part.drawn();
    return new PartLine(
        part.id(),
        part.partNumber(),
        part.frame().code(),
        drawn.segment(),
        drawn.hand().word(),
        drawn.alloy(),
        drawn.temper(),
        drawn.thickness(),
        thickness.map(Thickness::mm).orElse(null),
        progress.state(),
        progress.done(),
        progress.total(),
        progress.scrapped(),
        ExtractAnswer.of(part));
  }
}
