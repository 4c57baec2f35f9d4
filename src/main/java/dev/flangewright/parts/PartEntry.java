package dev.flangewright.parts;

import java.util.Objects;

/** A part as somebody wrote it into a form or a register file, before it is checked. */
public record PartEntry(
    String partNumber,
    String frame,
    String segment,
    String hand,
    String drawing,
    String drawingIssue,
    String alloy,
    String temper,
    String thicknessMm,
    String insideBendRadiusMm,
    String blockSet) {

  /** Nothing filled in yet. */
  public static final PartEntry EMPTY =
      new PartEntry("", "", "", "none", "", "", "", "", "", "", "");

  /** A field that was not sent at all counts as empty. */
  public PartEntry {
    partNumber = Objects.requireNonNullElse(partNumber, "");
    frame = Objects.requireNonNullElse(frame, "");
    segment = Objects.requireNonNullElse(segment, "");
    hand = Objects.requireNonNullElse(hand, "");
    drawing = Objects.requireNonNullElse(drawing, "");
    drawingIssue = Objects.requireNonNullElse(drawingIssue, "");
    alloy = Objects.requireNonNullElse(alloy, "");
    temper = Objects.requireNonNullElse(temper, "");
    thicknessMm = Objects.requireNonNullElse(thicknessMm, "");
    insideBendRadiusMm = Objects.requireNonNullElse(insideBendRadiusMm, "");
    blockSet = Objects.requireNonNullElse(blockSet, "");
  }

  /** A part as it stands in the register. */
  public static PartEntry of(Part part) {
    PartDrawing drawn = part.drawn();
    return new PartEntry(
        part.partNumber(),
        part.frame().code(),
        drawn.segment(),
        drawn.hand().word(),
        drawn.drawing(),
        drawn.drawingIssue(),
        drawn.alloy(),
        drawn.temper(),
        drawn.thickness(),
        drawn.insideBendRadiusMm().text(),
        drawn.blockSet());
  }
}
