package dev.flangewright.parts.web;

import dev.flangewright.forming.CutBlank;
import dev.flangewright.forming.Hole;
import dev.flangewright.forming.HoleFinding;
import dev.flangewright.forming.PartDevelopment;
import dev.flangewright.forming.Point;
import dev.flangewright.parts.PartFigures;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The developed outline of a part and the blank to cut, in the axes of its contours. */
record BlankAnswer(
    @Schema(description = "What is wrong with the outline; null when nothing is.")
        @Nullable String problem,
    @Schema(description = "Within the developed outline, holes taken off, mm².")
        @Nullable Double areaMm2,
    @Schema(description = "Of the blank as cut, with its allowance and without its holes, kg.")
        @Nullable Double massKg,
    @Schema(description = "Box around the developed outline along the axes.")
        PartDevelopment.Bounds box,
    @Schema(
            description =
                "A single flange was closed by its chord: the web's far side is not known, so area"
                    + " and mass reach only to the chord.")
        boolean closedByChord,
    @Schema(
            description =
                "Corners of the developed outline in order, counter-clockwise, the last not"
                    + " repeating the first; cutouts are notches in it.")
        List<Point> outline,
    @Schema(description = "The blank to cut; null where the outline has no area.")
        @Nullable Cut cut,
    List<Hole> holes,
    @Schema(description = "What there is to mind about the holes, in sentences.")
        List<String> holeWarnings) {

  /** The blank with its trim allowance. */
  @Schema(name = "CutBlank")
  record Cut(
      @Schema(description = "Metal left outside the developed outline, mm.") double allowanceMm,
      @Schema(description = "Within the line to cut, holes taken off, mm².") double areaMm2,
      @Schema(description = "The rectangle of least area around it, at any angle.")
          CutBlank.SmallestRectangle rectangle,
      @Schema(description = "Corners of the line to cut, counter-clockwise.") List<Point> line) {

    static Cut of(CutBlank cut) {
      return new Cut(cut.allowanceMm(), cut.areaMm2(), cut.rectangle(), cut.line());
    }
  }

  static BlankAnswer of(PartFigures figures, PartDevelopment developed) {
    CutBlank cut = developed.cut();
    return new BlankAnswer(
        developed.problem(),
        developed.areaMm2(),
        figures.blankMassKg(),
        developed.bounds(),
        developed.closedByChord(),
        developed.outline(),
        cut == null ? null : Cut.of(cut),
        developed.holes(),
        figures.holeFindings().stream().map(HoleFinding::sentence).toList());
  }
}
