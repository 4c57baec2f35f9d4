package dev.flangewright.parts;

import dev.flangewright.forming.FlangeKind;
import org.jspecify.annotations.Nullable;

/**
 * What the drawing says of one flange. Widths in mm, to the mould line.
 *
 * @param fitToleranceMm how near a fair curve must come to the stations, from 0 to 5 mm; null, as
 *     0, where they are exact
 */
public record FlangeDrawing(
    FlangeKind kind,
    Written finishedWidthMm,
    Written workingWidthMm,
    @Nullable Written fitToleranceMm) {

  /** A flange whose stations are exact. */
  public FlangeDrawing(FlangeKind kind, Written finishedWidthMm, Written workingWidthMm) {
    this(kind, finishedWidthMm, workingWidthMm, null);
  }

  /** The tolerance to fit with, mm; 0 where the stations are exact. */
  public double toleranceMm() {
    return fitToleranceMm == null ? 0 : fitToleranceMm.value();
  }

  /** The tolerance as it was written; empty where nothing was. */
  public String toleranceText() {
    return fitToleranceMm == null ? "" : fitToleranceMm.text();
  }

  /** The same flange with the tolerance of another. */
  public FlangeDrawing fittedAs(FlangeDrawing other) {
    return new FlangeDrawing(kind, finishedWidthMm, workingWidthMm, other.fitToleranceMm);
  }
}
