package dev.flangewright.parts.exchange;

import dev.flangewright.parts.FlangeDrawing;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartDrawing;
import java.util.List;
import java.util.function.Function;

/** What every row of a part repeats: all of a part but its flanges. */
record PartFacts(String frame, PartDrawing drawn) {

  /** A column and its text. */
  record Field<T>(String column, Function<T, String> text) {}

  static final List<Field<PartFacts>> FIELDS =
      List.of(
          new Field<>("frame", PartFacts::frame),
          new Field<>("segment", part -> part.drawn.segment()),
          new Field<>("hand", part -> part.drawn.hand().word()),
          new Field<>("drawing", part -> part.drawn.drawing()),
          new Field<>("drawing_issue", part -> part.drawn.drawingIssue()),
          new Field<>("alloy", part -> part.drawn.alloy()),
          new Field<>("temper", part -> part.drawn.temper()),
          new Field<>("thickness_mm", part -> part.drawn.thickness()),
          new Field<>("inside_bend_radius_mm", part -> part.drawn.insideBendRadiusMm().text()),
          new Field<>("block_set", part -> part.drawn.blockSet()));

  static final List<Field<FlangeDrawing>> FLANGE_FIELDS =
      List.of(
          new Field<>("flange_kind", flange -> flange.kind().label()),
          new Field<>("finished_width_mm", flange -> flange.finishedWidthMm().text()),
          new Field<>("working_width_mm", flange -> flange.workingWidthMm().text()),
          new Field<>("fit_tolerance_mm", FlangeDrawing::toleranceText));

  static PartFacts of(Part part) {
    return new PartFacts(part.frame().code(), part.drawn());
  }
}
