package dev.flangewright.parts;

import dev.flangewright.forming.FormingInput;
import dev.flangewright.forming.HoleKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;

/**
 * Reads what somebody wrote of holes and cutouts; a fault names its row, from 0, and its column:
 * {@code holes[2].x_mm}.
 */
final class CheckLayout {

  /** More than any frame segment has, and little enough for one page. */
  static final int MOST = 200;

  private static final String HOLES = "holes";
  private static final String CUTOUTS = "cutouts";
  private static final int LONGEST_LABEL = 40;

  private final Faults faults;

  CheckLayout(Faults faults) {
    this.faults = faults;
  }

  /** Each under a label of its own. */
  WrittenHoles holes(List<HoleEntry> rows) {
    Set<String> labels = new HashSet<>();
    return WrittenHoles.of(
        each(HOLES, rows, HoleEntry::isBlank, (row, here) -> hole(row, labels, here)));
  }

  private static WrittenHole hole(HoleEntry row, Set<String> labels, Faults here) {
    String label = here.text("label", row.label(), LONGEST_LABEL);
    if (!labels.add(label)) {
      here.add("label", label, "another hole of this part is called so");
    }
    return new WrittenHole(
        label,
        kind(row.kind(), here),
        here.number("x_mm", row.xMm(), FormingInput.X),
        here.number("y_mm", row.yMm(), FormingInput.Y),
        here.number("diameter_mm", row.diameterMm(), FormingInput.HOLE_DIAMETER));
  }

  private static HoleKind kind(String name, Faults here) {
    return Arrays.stream(HoleKind.values())
        .filter(kind -> kind.name().equals(name))
        .findFirst()
        .orElseGet(
            () -> {
              here.add("kind", name, "it must be one of the kinds in the list");
              return HoleKind.TOOLING;
            });
  }

  /** By flange; every flange of the part is there, also those without a cutout. */
  Map<Flange, WrittenCutouts> cutouts(List<CutoutEntry> rows, Part part) {
    List<Cut> cuts = each(CUTOUTS, rows, CutoutEntry::isBlank, (row, here) -> cut(row, part, here));
    Map<Flange, WrittenCutouts> byFlange = new LinkedHashMap<>();
    for (Flange flange : part.flanges()) {
      byFlange.put(
          flange,
          WrittenCutouts.of(
              cuts.stream()
                  .filter(cut -> cut.flange.equals(flange.name()))
                  .map(Cut::written)
                  .toList()));
    }
    return byFlange;
  }

  private record Cut(String flange, WrittenCutout written) {}

  private static Cut cut(CutoutEntry row, Part part, Faults here) {
    if (part.flange(row.flange()).isEmpty()) {
      here.add("flange", row.flange(), "this part has no such flange");
    }
    Written from = here.number("from_mm", row.fromMm(), FormingInput.CUT_FROM);
    Written to = here.number("to_mm", row.toMm(), FormingInput.CUT_TO);
    if (here.isEmpty() && to.value() <= from.value()) {
      here.add("to_mm", row.toMm(), "it must be above from_mm, " + row.fromMm());
    }
    Written depth =
        row.depthMm().isEmpty()
            ? null
            : here.number("depth_mm", row.depthMm(), FormingInput.CUT_DEPTH);
    return new Cut(row.flange(), new WrittenCutout(from, to, depth));
  }

  private <R, W> List<W> each(
      String field, List<R> rows, Predicate<R> isBlank, BiFunction<R, Faults, W> read) {
    if (rows.size() > MOST) {
      faults.add(field, "", "at most " + MOST + " rows can be taken");
      return List.of();
    }
    List<W> written = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      if (!isBlank.test(rows.get(i))) {
        Faults here = new Faults();
        written.add(read.apply(rows.get(i), here));
        String row = field + "[" + i + "].";
        here.list().forEach(f -> faults.add(row + f.field(), f.value(), f.reason()));
      }
    }
    return written;
  }
}
