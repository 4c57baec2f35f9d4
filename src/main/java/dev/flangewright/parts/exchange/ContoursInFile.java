package dev.flangewright.parts.exchange;

import dev.flangewright.forming.FormingInput;
import dev.flangewright.parts.Written;
import dev.flangewright.parts.WrittenStation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Gathers the rows of a contours file, flange by flange. */
final class ContoursInFile implements Consumer<CsvRow> {

  /** As many stations as a contour may have, and as many flanges as a register. */
  private static final int MOST_STATIONS = 2_000;

  private static final int MOST_FLANGES = CsvFile.REGISTER.mostRows();

  private final Problems problems;
  private final Map<FlangeKey, ContourInFile> contours = new LinkedHashMap<>();
  private final List<WrittenStation> open = new ArrayList<>();
  private final List<Integer> openLines = new ArrayList<>();
  private @Nullable FlangeKey openFlange;
  private int scattered;

  ContoursInFile(Problems problems) {
    this.problems = problems;
  }

  /** In the order of the file; call after {@link #end()}. */
  Map<FlangeKey, ContourInFile> contours() {
    return contours;
  }

  /** Flanges whose rows do not stand together. */
  int scattered() {
    return scattered;
  }

  @Override
  public void accept(CsvRow row) {
    Cells cells = new Cells(row, problems);
    FlangeKey key = new FlangeKey(cells.name("part_number", 60), cells.name("flange", 40));
    if (!key.equals(openFlange)) {
      end();
      scattered += contours.containsKey(key) ? 1 : 0;
      openFlange = key;
    }
    if (contours.size() == MOST_FLANGES && !contours.containsKey(key)) {
      cells.refuse("flange", "at most " + MOST_FLANGES + " flanges may have a contour");
      return;
    }
    ContourInFile contour = contours.computeIfAbsent(key, k -> new ContourInFile(contours.size()));
    if (open.size() + contour.count() == MOST_STATIONS) {
      cells.refuse("station", "a contour must have at most " + MOST_STATIONS + " stations");
      contour.isBad();
      return;
    }
    WrittenStation station = station(cells);
    if (cells.allGood() && station.number() <= contour.lastStation()) {
      cells.refuse(
          "station",
          "station must rise along a flange; the row before has station " + contour.lastStation());
    }
    if (cells.allGood()) {
      contour.reached(station.number());
    } else {
      contour.isBad();
    }
    open.add(station);
    openLines.add(row.line());
  }

  private static WrittenStation station(Cells cells) {
    int number = cells.whole("station");
    Written x = cells.number("x_mm", FormingInput.X);
    Written y = cells.number("y_mm", FormingInput.Y);
    Written angle = cells.number("bend_angle_deg", FormingInput.BEND_ANGLE);
    Written width = cells.numberOrNone("width_mm", FormingInput.STATION_WIDTH);
    return new WrittenStation(number, x, y, angle, width);
  }

  /** Puts the last flange away. */
  void end() {
    FlangeKey key = openFlange;
    ContourInFile contour = key == null ? null : contours.get(key);
    if (contour != null) {
      contour.add(open, openLines.stream().mapToInt(Integer::intValue).toArray());
    }
    open.clear();
    openLines.clear();
    openFlange = null;
  }
}
