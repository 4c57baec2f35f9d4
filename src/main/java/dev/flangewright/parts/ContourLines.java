package dev.flangewright.parts;

import dev.flangewright.forming.FormingInput;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A contour typed in as lines: {@code station, x, y, bend angle[, width]}. */
final class ContourLines {

  private static final String FIELD = "stations";
  private static final int MOST_LINES = 2000;
  private static final int LONGEST = 200_000;

  private ContourLines() {}

  static String line(WrittenStation station) {
    Written width = station.widthMm();
    String four =
        String.join(
            ", ",
            Integer.toString(station.number()),
            station.xMm().text(),
            station.yMm().text(),
            station.bendAngleDeg().text());
    return width == null ? four : four + ", " + width.text();
  }

  /**
   * Every line that cannot be read becomes a fault that names it; blank lines count for nothing.
   */
  static WrittenStations read(String text, Faults faults) {
    List<WrittenStation> stations = new ArrayList<>();
    List<String> lines = text.lines().toList();
    if (lines.size() > MOST_LINES || text.length() > LONGEST) {
      faults.add(FIELD, "", "at most " + MOST_LINES + " lines can be taken");
      return WrittenStations.NONE;
    }
    for (int i = 0; i < lines.size(); i++) {
      if (!lines.get(i).isBlank()) {
        WrittenStation station = station(i + 1, lines.get(i), faults);
        if (station != null) {
          stations.add(station);
        }
      }
    }
    return WrittenStations.of(stations);
  }

  private static @Nullable WrittenStation station(int line, String text, Faults faults) {
    String[] cells = text.split(",", -1);
    Faults here = new Faults();
    if (cells.length != 4 && cells.length != 5) {
      here.add("line", text.strip(), "it must be station, x, y, bend angle and perhaps width");
    }
    WrittenStation station = here.isEmpty() ? station(cells, here) : null;
    here.list().forEach(fault -> faults.add(FIELD, "", "line " + line + ", " + said(fault)));
    return here.isEmpty() ? station : null;
  }

  private static WrittenStation station(String[] cells, Faults here) {
    String width = cells.length == 5 ? cells[4].strip() : "";
    return new WrittenStation(
        number(cells[0].strip(), here),
        here.number("x_mm", cells[1].strip(), FormingInput.X),
        here.number("y_mm", cells[2].strip(), FormingInput.Y),
        here.number("bend_angle_deg", cells[3].strip(), FormingInput.BEND_ANGLE),
        width.isEmpty() ? null : here.number("width_mm", width, FormingInput.STATION_WIDTH));
  }

  private static int number(String cell, Faults here) {
    if (cell.matches("0|[1-9]\\d{0,8}")) {
      return Integer.parseInt(cell);
    }
    here.add("station", cell, "it must be a whole number from 0 to 999999999");
    return 0;
  }

  private static String said(Fault fault) {
    String sentence = fault.sentence();
    return sentence.substring(0, sentence.length() - 1);
  }
}
