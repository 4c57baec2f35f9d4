package dev.flangewright.parts;

import java.util.List;

/**
 * What the figures of a part are computed from: its drawing and its flanges, as they stand in the
 * register or as somebody supposes them.
 *
 * @param trimAllowanceMm left outside the developed outline when the blank is cut
 */
public record PartToFigure(
    long buildId,
    String partNumber,
    PartDrawing drawn,
    List<FlangeToFigure> flanges,
    Written trimAllowanceMm,
    WrittenHoles holes) {

  /** A part as it stands in the register. */
  public static PartToFigure of(Part part) {
    return new PartToFigure(
        part.build().id(),
        part.partNumber(),
        part.drawn(),
        part.flanges().stream().map(FlangeToFigure::of).toList(),
        part.trimAllowanceMm(),
        part.holes());
  }

  /** The same part drawn otherwise. */
  PartToFigure supposing(PartDrawing other, List<FlangeToFigure> otherFlanges) {
    return new PartToFigure(buildId, partNumber, other, otherFlanges, trimAllowanceMm, holes);
  }
}
