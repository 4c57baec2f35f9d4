package dev.flangewright.parts;

import java.util.Objects;

/**
 * A contour drawn as an SVG path, as somebody wrote it, before it is checked.
 *
 * @param path the text of the attribute {@code d}; one unit is one millimetre
 * @param spacingMm the largest distance between stations along the path
 * @param bendAngleDeg of every station, from flat
 * @param widthMm of every station; empty where the flange's own holds
 * @param yAxis the name of a {@link YAxis}
 * @param reversed whether the stations run from the path's end to its beginning
 */
public record PathEntry(
    String path,
    String spacingMm,
    String bendAngleDeg,
    String widthMm,
    String yAxis,
    Boolean reversed) {

  /** Nothing drawn yet. */
  public static final PathEntry EMPTY = new PathEntry("", "10", "90", "", YAxis.DOWN.name(), false);

  /** A field that was not sent at all counts as empty. */
  public PathEntry {
    path = Objects.requireNonNullElse(path, "");
    spacingMm = Objects.requireNonNullElse(spacingMm, "");
    bendAngleDeg = Objects.requireNonNullElse(bendAngleDeg, "");
    widthMm = Objects.requireNonNullElse(widthMm, "");
    yAxis = Objects.requireNonNullElse(yAxis, "");
    reversed = Objects.requireNonNullElse(reversed, false);
  }
}
