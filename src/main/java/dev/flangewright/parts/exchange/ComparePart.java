package dev.flangewright.parts.exchange;

import dev.flangewright.forming.Practice;
import dev.flangewright.forming.Sheet;
import dev.flangewright.materials.Thickness;
import dev.flangewright.parts.Flange;
import dev.flangewright.parts.FlangeDrawing;
import dev.flangewright.parts.Part;
import dev.flangewright.parts.PartDrawing;
import dev.flangewright.parts.WrittenStations;
import dev.flangewright.parts.exchange.PartInFile.FlangeInFile;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Compares what the files say of a part with what the build holds, and checks what would change.
 */
final class ComparePart {

  private final PlanSheet sheet;
  private final FilesRead read;
  private final CheckFlange check;
  private final Function<String, Optional<Thickness>> thicknesses;
  private final Practice practice;
  private int withoutContour;

  ComparePart(
      PlanSheet sheet,
      FilesRead read,
      Function<String, Optional<Thickness>> thicknesses,
      Practice practice) {
    this.sheet = sheet;
    this.read = read;
    this.check = new CheckFlange(read.problems());
    this.thicknesses = thicknesses;
    this.practice = practice;
  }

  /** Flanges of the register file that would have no contour after the import. */
  int withoutContour() {
    return withoutContour;
  }

  /**
   * @param part null if the build has no such part
   */
  void compare(Entry entry, @Nullable Part part) {
    PartInFile row = entry.row();
    if (row != null) {
      rows(row, part);
    }
    entry.contours().forEach((name, contour) -> contour(entry, name, contour, part));
    for (String name : flanges(entry, part)) {
      flange(entry, name, part);
    }
  }

  private void rows(PartInFile row, @Nullable Part part) {
    boolean changed = false;
    if (part == null) {
      sheet.newPart(row.partNumber());
    } else {
      changed = differs(row.partNumber(), "", PartFacts.FIELDS, PartFacts.of(part), row.facts());
    }
    for (FlangeInFile flange : row.flanges()) {
      Flange now = now(part, flange.name());
      if (now == null) {
        sheet.row(true, false);
        if (part != null) {
          sheet.change(new Change(row.partNumber(), flange.name(), "flange", "", "new"));
        }
      } else {
        boolean drawnAnew =
            differs(
                row.partNumber(),
                flange.name(),
                PartFacts.FLANGE_FIELDS,
                now.drawn(),
                read.drawn(flange, now));
        sheet.row(false, changed || drawnAnew);
      }
    }
  }

  private <T> boolean differs(
      String number, String flange, List<PartFacts.Field<T>> fields, T was, T becomes) {
    boolean differs = false;
    for (PartFacts.Field<T> field : fields) {
      String before = field.text().apply(was);
      String after = field.text().apply(becomes);
      if (!before.equals(after)) {
        sheet.change(new Change(number, flange, field.column(), before, after));
        differs = true;
      }
    }
    return differs;
  }

  private void contour(Entry entry, String name, ContourInFile contour, @Nullable Part part) {
    FlangeKey key = new FlangeKey(entry.partNumber(), name);
    Flange now = now(part, name);
    if (now == null && read.isRegisterBroken()) {
      return;
    }
    if (now == null && !read.register().names(key)) {
      String rows = contour.count() + " rows, to line " + contour.lastLine();
      read.problems()
          .add(
              CsvFile.CONTOURS,
              contour.firstLine(),
              "flange",
              name,
              "there is no flange " + name + " of " + key.partNumber() + " (" + rows + ")");
      return;
    }
    if (contour.bad()) {
      return;
    }
    WrittenStations was = now == null ? WrittenStations.NONE : now.stations();
    WrittenStations becomes = contour.stations();
    sheet.contour(key, becomes.lines(), was.isEmpty(), !was.equals(becomes));
    if (!was.isEmpty() && !was.equals(becomes)) {
      ChangedStations.between(key, was, becomes).forEach(sheet::change);
    }
  }

  /** The flanges that the files name, and all of the part if its sheet may change. */
  private static Set<String> flanges(Entry entry, @Nullable Part part) {
    Set<String> names = new LinkedHashSet<>();
    PartInFile row = entry.row();
    if (row != null) {
      row.flanges().forEach(flange -> names.add(flange.name()));
    }
    names.addAll(entry.contours().keySet());
    if (row != null && part != null) {
      part.flanges().forEach(flange -> names.add(flange.name()));
    }
    return names;
  }

  private void flange(Entry entry, String name, @Nullable Part part) {
    PartInFile row = entry.row();
    Flange now = now(part, name);
    FlangeInFile inFile = row == null ? null : row.flange(name).orElse(null);
    ContourInFile contour = entry.contours().get(name);
    FlangeDrawing drawn =
        inFile != null ? read.drawn(inFile, now) : now != null ? now.drawn() : null;
    Sheet metal = metal(row, part);
    if (drawn == null || metal == null || contour != null && contour.bad()) {
      return;
    }
    WrittenStations stations =
        contour != null ? contour.stations() : now != null ? now.stations() : WrittenStations.NONE;
    if (stations.isEmpty()) {
      withoutContour += inFile == null ? 0 : 1;
    } else if (now == null
        || !now.drawn().equals(drawn)
        || !now.stations().equals(stations)
        || !metal.equals(metal(null, part))) {
      int line = inFile != null ? inFile.line() : row == null ? 0 : row.line();
      check.check(
          new FlangeToCheck(
              new FlangeKey(entry.partNumber(), name), drawn, stations, metal, line, contour));
    }
  }

  private @Nullable Sheet metal(@Nullable PartInFile row, @Nullable Part part) {
    if (row != null) {
      return sheet(row.thicknessMm(), row.facts().drawn());
    }
    return part == null
        ? null
        : thicknesses
            .apply(part.drawn().thickness())
            .map(read -> sheet(read.mm(), part.drawn()))
            .orElse(null);
  }

  private Sheet sheet(double thicknessMm, PartDrawing drawn) {
    return Sheet.of(thicknessMm, drawn.insideBendRadiusMm().value(), null, practice);
  }

  private static @Nullable Flange now(@Nullable Part part, String name) {
    return part == null ? null : part.flange(name).orElse(null);
  }
}
