package dev.flangewright.parts;

import java.util.List;
import java.util.Objects;

/**
 * What is left round a blank and cut out of it, as somebody wrote it, before it is checked. It
 * replaces what was there: a row that is missing or left empty is no hole and no cutout.
 */
public record LayoutEntry(
    String trimAllowanceMm, List<HoleEntry> holes, List<CutoutEntry> cutouts) {

  /** A field or a table that was not sent at all counts as empty. */
  public LayoutEntry {
    trimAllowanceMm = Objects.requireNonNullElse(trimAllowanceMm, "");
    holes = holes == null ? List.of() : List.copyOf(holes);
    cutouts = cutouts == null ? List.of() : List.copyOf(cutouts);
  }

  /** A part as it stands in the register. */
  public static LayoutEntry of(Part part) {
    return new LayoutEntry(
        part.trimAllowanceMm().text(),
        part.holes().list().stream().map(HoleEntry::of).toList(),
        part.flanges().stream()
            .flatMap(
                flange ->
                    flange.cutouts().list().stream().map(cutout -> CutoutEntry.of(flange, cutout)))
            .toList());
  }
}
