package dev.flangewright.parts;

import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A flange as somebody wrote it, before it is checked.
 *
 * @param fitToleranceMm 0 or empty where the stations are exact
 * @param edgeCondition the name of an {@link dev.flangewright.forming.EdgeCondition}
 * @param stations one station a line: {@code station, x, y, bend angle[, width]}; may be empty
 */
public record FlangeEntry(
    String flange,
    String flangeKind,
    String finishedWidthMm,
    String workingWidthMm,
    String fitToleranceMm,
    String edgeCondition,
    String stations) {

  /** Nothing filled in yet. */
  public static final FlangeEntry EMPTY = new FlangeEntry("", "", "", "", "0", "POLISHED", "");

  /** A field that was not sent at all counts as empty. */
  public FlangeEntry {
    flange = Objects.requireNonNullElse(flange, "");
    flangeKind = Objects.requireNonNullElse(flangeKind, "");
    finishedWidthMm = Objects.requireNonNullElse(finishedWidthMm, "");
    workingWidthMm = Objects.requireNonNullElse(workingWidthMm, "");
    fitToleranceMm = Objects.requireNonNullElse(fitToleranceMm, "");
    edgeCondition = Objects.requireNonNullElse(edgeCondition, "");
    stations = Objects.requireNonNullElse(stations, "");
  }

  /** A flange as it stands in the register. */
  public static FlangeEntry of(Flange flange) {
    FlangeDrawing drawn = flange.drawn();
    String lines =
        flange.stations().list().stream().map(ContourLines::line).collect(Collectors.joining("\n"));
    return new FlangeEntry(
        flange.name(),
        drawn.kind().label(),
        drawn.finishedWidthMm().text(),
        drawn.workingWidthMm().text(),
        drawn.toleranceText(),
        flange.edgeCondition().name(),
        lines);
  }

  /** The same entry with another contour. */
  public FlangeEntry along(String lines) {
    return new FlangeEntry(
        flange, flangeKind, finishedWidthMm, workingWidthMm, fitToleranceMm, edgeCondition, lines);
  }
}
