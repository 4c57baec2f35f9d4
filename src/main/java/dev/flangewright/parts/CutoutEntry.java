package dev.flangewright.parts;

import java.util.Objects;

/**
 * A cutout as somebody wrote it, before it is checked.
 *
 * @param flange the name of the flange it is cut out of
 * @param depthMm empty for one through the bend
 */
public record CutoutEntry(String flange, String fromMm, String toMm, String depthMm) {

  public static final CutoutEntry EMPTY = new CutoutEntry("", "", "", "");

  /** A field that was not sent at all counts as empty. */
  public CutoutEntry {
    flange = Objects.requireNonNullElse(flange, "");
    fromMm = Objects.requireNonNullElse(fromMm, "");
    toMm = Objects.requireNonNullElse(toMm, "");
    depthMm = Objects.requireNonNullElse(depthMm, "");
  }

  static CutoutEntry of(Flange flange, WrittenCutout cutout) {
    Written depth = cutout.depthMm();
    return new CutoutEntry(
        flange.name(),
        cutout.fromMm().text(),
        cutout.toMm().text(),
        depth == null ? "" : depth.text());
  }

  /** Nothing written but the flange, which a form cannot leave open. */
  boolean isBlank() {
    return (fromMm + toMm + depthMm).isBlank();
  }
}
