package dev.flangewright.parts;

import java.util.List;
import java.util.stream.Collectors;

/**
 * All stations of one contour, kept as one text of a line a station: a contour is read and replaced
 * whole, and its numbers must come back as they were written.
 */
public record WrittenStations(String lines) {

  /** No contour yet. */
  public static final WrittenStations NONE = new WrittenStations("");

  public static WrittenStations of(List<WrittenStation> stations) {
    return new WrittenStations(
        stations.stream().map(WrittenStation::line).collect(Collectors.joining("\n")));
  }

  public boolean isEmpty() {
    return lines.isEmpty();
  }

  public List<WrittenStation> list() {
    return lines.lines().map(WrittenStation::ofLine).toList();
  }
}
