package dev.flangewright.overview;

import dev.flangewright.parts.WrittenStation;
import dev.flangewright.parts.WrittenStations;
import java.util.stream.Collectors;

/** A flange's whole contour, for a drawing large enough to show every station. */
record ContourLine(long partId, WrittenStations stations) {

  /** {@code x,y x,y …} in mm, as a thinned-out sketch is written. */
  EdgeLine asEdge() {
    return new EdgeLine(
        partId, stations.list().stream().map(ContourLine::point).collect(Collectors.joining(" ")));
  }

  private static String point(WrittenStation station) {
    return station.xMm() + "," + station.yMm();
  }
}
