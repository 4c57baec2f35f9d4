package dev.flangewright.parts;

import java.util.Objects;

/**
 * A hole as somebody wrote it, before it is checked.
 *
 * @param kind the name of a {@link dev.flangewright.forming.HoleKind}
 */
public record HoleEntry(String label, String kind, String xMm, String yMm, String diameterMm) {

  public static final HoleEntry EMPTY = new HoleEntry("", "TOOLING", "", "", "");

  /** A field that was not sent at all counts as empty. */
  public HoleEntry {
    label = Objects.requireNonNullElse(label, "");
    kind = Objects.requireNonNullElse(kind, "");
    xMm = Objects.requireNonNullElse(xMm, "");
    yMm = Objects.requireNonNullElse(yMm, "");
    diameterMm = Objects.requireNonNullElse(diameterMm, "");
  }

  static HoleEntry of(WrittenHole hole) {
    return new HoleEntry(
        hole.label(),
        hole.kind().name(),
        hole.xMm().text(),
        hole.yMm().text(),
        hole.diameterMm().text());
  }

  /** Nothing written but the kind, which a form cannot leave open. */
  boolean isBlank() {
    return (label + xMm + yMm + diameterMm).isBlank();
  }
}
