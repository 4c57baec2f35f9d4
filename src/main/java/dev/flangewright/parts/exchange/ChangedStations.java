package dev.flangewright.parts.exchange;

import dev.flangewright.parts.Written;
import dev.flangewright.parts.WrittenStation;
import dev.flangewright.parts.WrittenStations;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Says how one contour differs from another. */
final class ChangedStations {

  private ChangedStations() {}

  /** Value by value if the stations are the same, else as a whole. */
  static List<Change> between(FlangeKey flange, WrittenStations was, WrittenStations becomes) {
    List<WrittenStation> before = was.list();
    List<WrittenStation> after = becomes.list();
    if (!numbers(before).equals(numbers(after))) {
      return List.of(change(flange, "contour", stations(before), stations(after)));
    }
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      WrittenStation a = before.get(i);
      WrittenStation b = after.get(i);
      String station = "station " + a.number() + " ";
      add(changes, flange, station + "x_mm", a.xMm(), b.xMm());
      add(changes, flange, station + "y_mm", a.yMm(), b.yMm());
      add(changes, flange, station + "bend_angle_deg", a.bendAngleDeg(), b.bendAngleDeg());
      add(changes, flange, station + "width_mm", a.widthMm(), b.widthMm());
    }
    return changes;
  }

  private static void add(
      List<Change> changes,
      FlangeKey flange,
      String field,
      @Nullable Written was,
      @Nullable Written becomes) {
    String before = was == null ? "" : was.text();
    String after = becomes == null ? "" : becomes.text();
    if (!before.equals(after)) {
      changes.add(change(flange, field, before, after));
    }
  }

  private static Change change(FlangeKey flange, String field, String was, String becomes) {
    return new Change(flange.partNumber(), flange.flange(), field, was, becomes);
  }

  private static List<Integer> numbers(List<WrittenStation> stations) {
    return stations.stream().map(WrittenStation::number).toList();
  }

  private static String stations(List<WrittenStation> stations) {
    return stations.size()
        + " stations, "
        + stations.get(0).number()
        + " to "
        + stations.get(stations.size() - 1).number();
  }
}
